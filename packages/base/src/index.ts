export { DrawcordError, type ErrorData, errorFrom, type Facts } from "./error.js";
export { nearest } from "./nearest.js";
export type { Range, TextPoint } from "./range.js";
export { listed, many, runsOf } from "./words.js";
