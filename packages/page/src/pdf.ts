export type { FontName } from "./print/font-names.js";
export { type Paper, pdfWith } from "./print/pdf.js";
