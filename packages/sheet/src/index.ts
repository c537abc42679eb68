export { SheetError, type SheetErrorCode } from "./error.js";
export { type PartName, partNames, type Sheet, type SheetPart, shortParts } from "./part-names.js";
export type { SheetOptions } from "./parts/context.js";
export type { ReadingDirection } from "./pictures/unit-threading.js";
export type { ClothSpot, Corner } from "./pictures/window.js";
export { makeDraftSheet } from "./plain/sheet.js";
export { makeSheet } from "./sheet.js";
