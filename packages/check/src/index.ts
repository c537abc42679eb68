export type {
  CheckOptions,
  FloatLimit,
  Limits,
  LoomOptions,
  Repeat,
  Sett,
  Waiver,
} from "./options.js";
export type { CutTally, Finding, FloatTally, Report, Severity, Span, Spread } from "./report.js";
