export { colourDistance, isDark, isSameColour, toldApart } from "./colour/compare.js";
export { mixed } from "./colour/light.js";
export { readColour } from "./colour/named.js";
export { type Colour, colourOf, type Rgb, readRgb, rgbOf } from "./colour/rgb.js";
export { DrawError, type DrawErrorCode } from "./error.js";
export type { DrawOptions } from "./options.js";
export { drawPixels, type Pixels } from "./pixels.js";
export { squaresPath } from "./squares.js";
export { drawSvg, type SvgOptions } from "./svg.js";
