export { missingLetters } from "./print/missing-letters.js";
export { type Paper, toPdf } from "./print/pdf.js";
export { type PngOptions, toPng } from "./print/png.js";
