import { type CheckOptions, check } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import { mendFigure } from "./mends/figure.js";
import { mendPlan, mendTogether } from "./mends/plan.js";
import { squaresTurned } from "./mends/turned.js";

/** The least changes after which one rule or several pass, and no other finds anything new or worse. */
export interface Mend {
  /** The rules that found something before and find nothing after; that for which the mend was sought comes first. */
  readonly rules: readonly string[];
  readonly changes: readonly Change[];
  /** How many squares (units x rows) are turned, where units and rows stay as many as they were. */
  readonly squares?: number;
  /** The draft with the changes made. */
  readonly draft: UnitDraft;
}

/**
 * Mends what can be mended, each mend upon those before it: first the plan (shafts, ties, slips, the ground's start), each
 * fault by itself and then faults that can only be mended together; then the figure, square by square. Every mend is
 * proved: the mended draft is worked out and checked again, the rule must pass, and no other rule may find what it did
 * not find before, or find it worse. For notes alone, what a slipped unit or row gets from its counterpart is not new.
 * @returns the mends found, none where there is nothing to mend or no mend is known
 * @throws {CheckError} and {UnitsError} as `check`
 * @example mend(draft) // []
 */
export function mend(draft: UnitDraft, options: CheckOptions = {}): readonly Mend[] {
  const mends: Mend[] = [];
  let before = { draft, report: check(draft, options) };
  // Searches for squares are long: what had none has hardly one after another was found.
  const without = new Set<string>();
  for (;;) {
    const found =
      mendPlan(before, options) ?? mendTogether(before, options) ?? mendFigure(before, options, without);
    if (found === undefined) return mends;
    const { changes, draft: mended, report, rules } = found;
    const { lifts, threading } = before.draft;
    const sameSize = mended.lifts.length === lifts.length && mended.threading.length === threading.length;
    mends.push({
      rules,
      changes,
      ...(sameSize && { squares: squaresTurned(before.draft, mended) }),
      draft: mended,
    });
    before = { draft: mended, report };
  }
}
