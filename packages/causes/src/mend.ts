import { type CheckOptions, check, type RuleName } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import { type Cause, type CausesOptions, findCauses } from "./causes.js";
import { mendFigure } from "./mends/figure.js";
import { mendPlan } from "./mends/plan.js";
import type { Checked } from "./mends/proof.js";
import { squaresTurned } from "./mends/turned.js";
import { passes } from "./mends/worse.js";
import { watchOf } from "./search.js";
import { applyTogether } from "./together.js";

/** Changes that mend a draft, or may. */
export interface Mend {
  /** The rules that found something before and find nothing after; that for which the mend was sought comes first. */
  readonly rules: readonly RuleName[];
  /** The edits, by the places of the draft as it is. */
  readonly changes: readonly Change[];
  /**
   * Whether it undoes a slip and nothing else would do as well. What is not sure is offered: another figure or another
   * ground is the weaver's to choose.
   */
  readonly sure: boolean;
  /** The cause that it undoes; left out where no slip explains what is found. */
  readonly cause?: Cause;
  /** How many squares (units x rows) are turned, where units and rows stay as many as they were. */
  readonly squares?: number;
  /** The draft with the changes of this mend and of those before it made. */
  readonly draft: UnitDraft;
}

/** How mends are looked for. */
export interface MendOptions extends CausesOptions {
  /** The causes of the draft, where `findCauses` has told them already; default: they are looked for. */
  readonly causes?: readonly Cause[] | undefined;
}

/**
 * Mends a draft, each mend upon those before it: first the slips that are sure, then those that are not, then what no slip
 * explains: the ground's ties and start, the selvedges, and the figure square by square. What is sought for a rule is
 * proved: the draft is worked out and checked again, the rule must pass, and no other rule may find what it did not find
 * before, or find it worse. Changes of slips name places of the draft as it is given. No unit and no row is ever taken
 * out to silence a rule.
 * @param draft the draft
 * @param options how it is to be checked
 * @param search what is known already, and how long to search; the mends found until then are given
 * @returns the mends found, none where there is nothing to mend or no mend is known
 * @throws {CheckError} and {UnitsError} as `check`
 * @example mend(draft) // []
 */
export function mend(
  draft: UnitDraft,
  options: CheckOptions = {},
  search: MendOptions = {},
): readonly Mend[] {
  const report = search.report ?? check(draft, options);
  const watch = watchOf(search);
  const causes = search.causes ?? findCauses(draft, options, { ...search, report }).causes;
  const mends: Mend[] = [];
  let before: Checked = { draft, report };
  const made: Change[] = [];
  for (const cause of [...causes.filter(({ sure }) => sure), ...causes.filter(({ sure }) => !sure)]) {
    made.push(...cause.changes);
    const after = checkedOf(applyTogether(draft, made), options);
    mends.push(mendOf(before, after, cause.changes, passed(before, after), { sure: cause.sure, cause }));
    before = after;
  }
  // Searches for squares are long: what had none has hardly one after another was found.
  const without = new Set<string>();
  for (;;) {
    const found = mendPlan(before, options, watch) ?? mendFigure(before, options, without, watch);
    if (found === undefined) return mends;
    const { changes, rules } = found;
    mends.push(mendOf(before, found, changes, rules, { sure: false }));
    before = found;
  }
}

function checkedOf(draft: UnitDraft, options: CheckOptions): Checked {
  return { draft, report: check(draft, options) };
}

/** The rules that pass now and did not before. */
function passed(before: Checked, after: Checked): RuleName[] {
  const failed = new Set(before.report.findings.map(({ rule }) => rule));
  return [...failed].filter((rule) => !passes(before.report, rule) && passes(after.report, rule));
}

function mendOf(
  before: Checked,
  after: Checked,
  changes: readonly Change[],
  rules: readonly RuleName[],
  of: Pick<Mend, "sure" | "cause">,
): Mend {
  const [was, is] = [before.draft, after.draft];
  const sameSize = is.lifts.length === was.lifts.length && is.threading.length === was.threading.length;
  return { rules, changes, ...of, ...(sameSize && { squares: squaresTurned(was, is) }), draft: is };
}
