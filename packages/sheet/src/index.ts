export { SheetError, type SheetErrorCode } from "./error.js";
export { type PartName, partNames, type Sheet, type SheetPart, shortParts } from "./part-names.js";
export type { SheetOptions } from "./parts/context.js";
export type { Corner } from "./pictures/corner.js";
export type { Reading } from "./pictures/unit-threading.js";
export { makeSheet } from "./sheet.js";
