import { type CheckOptions, check, type Report, type RuleName } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import { noneWorse, passes } from "./worse.js";

/** A draft and what was found in it. */
export interface Checked {
  readonly draft: UnitDraft;
  readonly report: Report;
}

/** A draft that was come to by changes, checked. */
export interface Mended extends Checked {
  readonly changes: readonly Change[];
  /** The rules that pass now and did not before. */
  readonly rules: readonly RuleName[];
}

/** Checks a mended draft again: it will do when the rules aimed at pass and nothing is worse than before. */
export function prove(
  before: Checked,
  changes: readonly Change[],
  after: Checked,
  aims: readonly RuleName[],
): Mended | undefined {
  if (!aims.every((rule) => passes(after.report, rule))) return undefined;
  const failed = new Set<RuleName>(before.report.findings.map(({ rule }) => rule));
  for (const aim of aims) failed.delete(aim);
  const too = [...failed].filter((rule) => !passes(before.report, rule) && passes(after.report, rule));
  const rules = [...aims, ...too];
  return noneWorse(before.report, after.report, rules) ? { ...after, changes, rules } : undefined;
}

export function checked(draft: UnitDraft, options: CheckOptions): Checked {
  return { draft, report: check(draft, options) };
}
