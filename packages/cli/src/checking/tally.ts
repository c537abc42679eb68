import type { Report, Severity } from "@drawcord/check";
import type { PlacedCause } from "@drawcord/review";
import type { Failure } from "./cloth.js";

/** What of a report counts in a run of many. */
export interface Counts {
  readonly summary: Report["summary"];
  readonly rules: Report["rules"];
  /** Findings waived, by rule. */
  readonly waived: Readonly<Record<string, number>>;
}

/** What came of a run. */
export interface Tally {
  /** Files checked. */
  files: number;
  /** Files that could not be used, in their order. */
  readonly failures: Failure[];
  readonly summary: Record<Severity, number>;
  /** Findings waived, by rule. */
  readonly waived: Map<string, number>;
  /** Every rule that looked at a file. */
  readonly ran: Set<string>;
  /** Rules that did not look at a file: by reason and rule, at how many. */
  readonly skipped: Map<string, Map<string, number>>;
}

/** The tally of nothing. */
export function emptyTally(): Tally {
  return {
    files: 0,
    failures: [],
    summary: { error: 0, warning: 0, note: 0 },
    waived: new Map(),
    ran: new Set(),
    skipped: new Map(),
  };
}

/** What counts of one report: its findings, and the slips that no finding tells of. */
export function countsOf({ findings, rules, summary }: Report, causes: readonly PlacedCause[] = []): Counts {
  const waived: Record<string, number> = {};
  const all = { ...summary };
  for (const cause of causes) {
    if (cause.waived !== undefined) waived["slip"] = (waived["slip"] ?? 0) + 1;
    else if (cause.explains.length === 0) all[cause.severity]++;
  }
  for (const finding of findings) {
    if (finding.waived !== undefined) waived[finding.rule] = (waived[finding.rule] ?? 0) + 1;
  }
  return { summary: all, rules, waived };
}

/** Adds one report to a tally. */
export function addTo(tally: Tally, { rules, summary, waived }: Counts): void {
  tally.files++;
  for (const severity of ["error", "warning", "note"] as const) tally.summary[severity] += summary[severity];
  for (const [rule, number] of Object.entries(waived)) add(tally.waived, rule, number);
  for (const rule of rules.ran) tally.ran.add(rule);
  for (const { reason, rule } of rules.skipped) {
    const byRule = tally.skipped.get(reason) ?? new Map<string, number>();
    tally.skipped.set(reason, byRule);
    add(byRule, rule, 1);
  }
}

function add(counts: Map<string, number>, name: string, number: number): void {
  counts.set(name, (counts.get(name) ?? 0) + number);
}

/** What makes the exit status 1. */
export interface Strictness {
  readonly failOn: Severity;
  /** The most warnings that pass, in all files together. */
  readonly maxWarnings: number;
}

/** 2 when a file could not be used, 1 when something was found that fails, else 0. */
export function exitStatus({ failures, summary }: Tally, { failOn, maxWarnings }: Strictness): 0 | 1 | 2 {
  if (failures.length > 0) return 2;
  const levels = LEVELS.slice(0, LEVELS.indexOf(failOn) + 1);
  return levels.some((level) => summary[level] > 0) || summary.warning > maxWarnings ? 1 : 0;
}

/** The levels of findings, the heaviest first. */
export const LEVELS: readonly Severity[] = ["error", "warning", "note"];
