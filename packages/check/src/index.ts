export type { CutTally, Finding, FloatTally, Report, Severity, Span, Spread } from "./report.js";
