export { GroundError, type GroundErrorCode } from "./error.js";
export type { Ground, GroundStep, ShaftSet } from "./types.js";
