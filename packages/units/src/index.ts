export { checkDraft, type DraftSize, draftSize, MOST_INTERLACEMENTS, MOST_THREADS } from "./draft-check.js";
export { UnitsError, type UnitsErrorCode, type UnitsFacts } from "./error.js";
export { expand } from "./expand.js";
export { type LiftsOptions, parseLifts, printLifts } from "./lift-notation.js";
export { gridFromLifts, liftsFromGrid } from "./picture.js";
export { parseRows, parseShafts, printShafts, type RowsOptions } from "./row-notation.js";
export { parseThreading, printThreading, type ThreadingOptions } from "./threading-notation.js";
export type { Expansion, UnitDraft, UnitShafts } from "./types.js";
