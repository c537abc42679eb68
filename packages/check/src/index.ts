export { check, checkGrid } from "./check.js";
export type { Cloth, Figure, Plan, Squares, System } from "./cloth.js";
export { CheckError, type CheckErrorCode } from "./error.js";
export { NOT_ASKED_FOR } from "./findings.js";
export { allowedFloat } from "./float-limit.js";
export type { AllowedLength } from "./measured-length.js";
export type {
  AreaLimit,
  CheckOptions,
  FloatLimit,
  Limits,
  LoomOptions,
  Repeat,
  Sett,
  StatedNumber,
  StretchLimit,
  Waiver,
} from "./options.js";
export type { CutTally, Finding, FloatTally, Report, Severity, Span, Spread } from "./report.js";
export { examplePicture } from "./rules/example-picture.js";
export type { Example, Fact, Rule } from "./rules/rule.js";
export { rules } from "./rules.js";
