import type { UnitDraft } from "@drawcord/units";
import { check } from "./check.js";
import { applyChange, type Change } from "./mends/change.js";
import { mendCuts } from "./mends/cuts.js";
import { mendFloats } from "./mends/floats.js";
import { mendSelvedges } from "./mends/selvedges.js";
import { mendLifts, mendThreading } from "./mends/slips.js";
import { squaresTurned } from "./mends/turned.js";
import { noneWorse, passes } from "./mends/worse.js";
import type { CheckOptions } from "./options.js";
import type { Report } from "./report.js";

/** The least change after which a rule finds nothing and no other finds more. */
export interface Mend {
  readonly rule: string;
  readonly changes: readonly Change[];
  /** How many squares (units x rows) are turned, where units and rows stay as many as they were. */
  readonly squares?: number;
  /** The draft with the changes made. */
  readonly draft: UnitDraft;
}

type Search = (
  draft: UnitDraft,
  accept: (mended: UnitDraft) => boolean,
  options: CheckOptions,
) => readonly Change[] | undefined;

/** The rules whose findings can be mended, in the order in which `mend` takes them: plan before cloth. */
const searches: Readonly<Record<string, Search>> = {
  "threading-slip": mendThreading,
  "lift-slip": mendLifts,
  "open-cut": mendCuts,
  "float-length": (draft, accept, options) => mendFloats(draft, options, accept),
  "uneven-take-up": mendSelvedges,
};

/**
 * Mends what can be mended, rule by rule, each upon the mends before it. Every mend is proved: the mended draft is worked
 * out and checked again, the rule must pass, and no other rule may find more faults or a worse one than before.
 * @returns the mends found, none where there is nothing to mend or no mend is known
 * @throws {CheckError} and {UnitsError} as `check`
 * @example mend(draft) // []
 */
export function mend(draft: UnitDraft, options: CheckOptions = {}): readonly Mend[] {
  const mends: Mend[] = [];
  let current = draft;
  let report = check(draft, options);
  for (const [rule, search] of Object.entries(searches)) {
    if (passes(report, rule)) continue;
    const before: Report = report;
    const accept = (mended: UnitDraft) => {
      const after = check(mended, options);
      return passes(after, rule) && noneWorse(before, after, rule);
    };
    const changes = search(current, accept, options);
    if (changes === undefined) continue;
    const mended = changes.reduce(applyChange, current);
    const sameSize =
      mended.lifts.length === current.lifts.length && mended.threading.length === current.threading.length;
    mends.push({
      rule,
      changes,
      ...(sameSize && { squares: squaresTurned(current, mended) }),
      draft: mended,
    });
    current = mended;
    report = check(mended, options);
  }
  return mends;
}
