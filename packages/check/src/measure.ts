export type { Cloth, Figure, UnitLayout } from "./cloth.js";
export { findAll } from "./findings.js";
export { allowedOfGround, eachGroundFloat } from "./measure/ground-floats.js";
export { eachLongRun } from "./measure/long-runs.js";
export { measureDraft } from "./measure/measure.js";
export { type WeftAllowance, weftAllowances } from "./weft-allowances.js";
