export { installedFont } from "./print/fonts.js";
export { missingLetters } from "./print/missing-letters.js";
export type { Paper } from "./print/pdf.js";
export { type PngOptions, toPng } from "./print/png.js";
export { toPdf } from "./print/to-pdf.js";
