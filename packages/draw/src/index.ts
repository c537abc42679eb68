export { colourDistance, isDark, isSameColour, toldApart } from "./colour/compare.js";
export { mixed } from "./colour/light.js";
export { nearestColourName, parseColour } from "./colour/named.js";
export { type Colour, colourOf, parseRgb, type Rgb, rgbOf } from "./colour/rgb.js";
export { DrawError, type DrawErrorCode } from "./error.js";
export type { DrawOptions } from "./options.js";
export { drawPixels, type Pixels } from "./pixels.js";
export { squaresPath } from "./squares.js";
export { type DrawSvgOptions, drawSvg } from "./svg.js";
