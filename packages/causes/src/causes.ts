/**
 * From findings to what was written wrong (R. Reiter, "A theory of diagnosis from first principles", Artificial
 * Intelligence 32, 1987, from memory): edits that the tellings of the plan suggest are made one by one and the cloth is
 * worked out again, and what is then no longer found, the edit explains. What no slip of the plan explains is looked for
 * in the ground, its start, and what the findings name themselves.
 */
import { type CheckOptions, check, type Finding, type Report, type Severity } from "@drawcord/check";
import { type Change, type UnitDraft, UnitsError } from "@drawcord/units";
import { effectOf } from "./same.js";
import { type SearchBounds, watchOf } from "./search.js";
import { sayCause } from "./sentences.js";
import type { Slip, SlipReason } from "./slip.js";
import { groundThreadingSuspects } from "./suspects/ground-threading.js";
import { groupSuspects } from "./suspects/groups.js";
import { liftSuspects } from "./suspects/lifts.js";
import { drawnInVain, statedWrong } from "./suspects/named.js";
import { picksSuspects } from "./suspects/picks.js";
import { ruleOf } from "./suspects/rule-of.js";
import { selvedgeSuspects } from "./suspects/selvedges.js";
import { startSuspects } from "./suspects/start.js";
import { straySuspects } from "./suspects/strays.js";
import type { Suspect } from "./suspects/suspect.js";
import { MOST_ENTRIES, threadingSuspects, weakThreadingSuspects } from "./suspects/threading.js";
import { groundSuspects, uncutSteps } from "./suspects/ties.js";
import { eachByItself, type Written, writtenAndWhole } from "./suspects/written.js";
import { applyTogether } from "./together.js";

/** What was written wrong, and the edit that sets it right. */
export interface Cause {
  /** One sentence, lower case and without a full stop: what is written, and what the rest says. */
  readonly message: string;
  /** How much it weighs: as the worst that it explains, and a warning where the telling alone is sure of it. */
  readonly severity: Severity;
  /** What is written, and what the rest says, as data: all that `message` says. */
  readonly slip: Slip;
  /** What may have been written wrong instead, the likeliest rival, as data; left out where nothing comes near. */
  readonly or?: Slip;
  /** The edit that undoes the slip, by the places of the draft as it is. */
  readonly changes: readonly Change[];
  /** Why it is taken for a slip, in one sentence. */
  readonly why: string;
  /** Why it is taken for a slip, as data: all that `why` says. */
  readonly reason: SlipReason;
  /** The findings, by their place in the report from 0, that are gone once the edit is made, but those of causes before it. */
  readonly explains: readonly number[];
  /** Whether no other edit of the same size does as well, and this one brings nothing new. */
  readonly sure: boolean;
  /** Other edits that do as well or nearly so, the likeliest first; none where it is sure. */
  readonly rivals: readonly (readonly Change[])[];
}

/** How causes are looked for. */
export interface CausesOptions extends SearchBounds {
  /** The report of the draft, where it is known already; default: it is checked. */
  readonly report?: Report;
  /**
   * How the lifts are written: for every line the rows (from 0) that it weaves, so that a slip in a block that is woven
   * again is one slip. Default: a line for each row.
   */
  readonly written?: Written;
  /** The line in which each row is written, by a number, whatever it draws; default: each in one of its own. */
  readonly lines?: readonly number[];
  /**
   * How the threading is written: for every unit that was written the units (from 0) that it threads, so that a slip in a
   * group that comes again is one slip. Default: each by itself.
   */
  readonly writtenUnits?: Written;
}

/** The causes of a draft, and what was not looked at. */
export interface Causes {
  /** What was written wrong, the first to be looked at first. */
  readonly causes: readonly Cause[];
  /** What was not tried, as clauses; none as a rule. */
  readonly untried: readonly string[];
}

/** An edit that was made and checked. */
interface Proved {
  readonly suspect: Suspect;
  readonly gone: readonly number[];
  /** Findings above a note that were not there before. */
  readonly added: readonly Finding[];
}

/**
 * What was written wrong in a draft: the causes of its findings, and slips of the plan that no finding tells of, that
 * which the weaver should look at first before all others.
 * @param draft the draft
 * @param options how it is to be checked
 * @param search what is known already, and how long to search
 * @returns the causes, and what was left untried
 * @throws {CheckError} and {UnitsError} as `check`
 * @example findCauses(draft).causes // []
 */
export function findCauses(draft: UnitDraft, options: CheckOptions = {}, search: CausesOptions = {}): Causes {
  const report = search.report ?? check(draft, options);
  const untried: string[] = [];
  const watch = watchOf(search);
  const writtenUnits = search.writtenUnits ?? eachByItself(draft.threading);
  const told = toldSuspects(
    draft,
    search.written ?? eachByItself(draft.lifts),
    search.lines ?? [],
    writtenUnits,
    untried,
  );
  const proved: Proved[] = [];
  let tried = 0;
  const prove = (suspect: Suspect, of: number, upon?: UnitDraft) => {
    if (watch(tried++, of)) {
      untried.push(`whether ${sayCause(suspect).message}: the time was over`);
      return;
    }
    const known = explained(proved);
    const speaks = (at: number) => !known.has(at) && speaksFor(suspect, report.findings[at]!);
    // What was explained meanwhile needs no second cause.
    if (upon !== undefined && !report.findings.some(({ waived }, at) => waived === undefined && speaks(at)))
      return;
    const one = likeliest(upon ?? draft, options, report, suspect);
    if (one === undefined) return;
    if (upon === undefined) proved.push(one);
    else if (one.gone.some(speaks)) proved.push({ ...one, gone: one.gone.filter((at) => !known.has(at)) });
  };
  for (const suspect of told) prove(suspect, told.length);
  // What the slips of the plan leave is looked for in a draft without them.
  const base = () => lastOf(proved, draft);
  const weakSources: Source = (one, _, left) => weakUnits(one, writtenUnits, left);
  for (const source of [groundSources, weakSources, namedSources]) {
    const left = leftOf(report, proved);
    if (left.length === 0) break;
    const suspects = source(draft, base(), left);
    tried = 0;
    for (const suspect of suspects) prove(suspect, suspects.length, base());
  }
  return { causes: inOrder(proved, report, newFaults(proved, draft, options, report)), untried };
}

function toldSuspects(
  draft: UnitDraft,
  written: Written,
  lines: readonly number[],
  writtenUnits: Written,
  untried: string[],
): Suspect[] {
  if (draft.threading.length > MOST_ENTRIES) untried.push(`the telling of more than ${MOST_ENTRIES} units`);
  if (written.length > MOST_ENTRIES) untried.push(`the telling of more than ${MOST_ENTRIES} rows`);
  const told = writtenAndWhole(written, draft.lifts.length, (as) => liftSuspects(draft, as));
  // Where the whole rows tell nothing, each group of shafts may.
  const planned = told.length > 0 || written.length > MOST_ENTRIES ? told : groupSuspects(draft, lines);
  return [
    ...groundSuspects(draft.ground),
    ...groundThreadingSuspects(draft.ground),
    ...writtenAndWhole(writtenUnits, draft.threading.length, (as) => threadingSuspects(draft, as)),
    ...planned,
    // What the rest of the plan tells of a row is more than the eye sees in it.
    ...(planned.length > 0 ? [] : straySuspects(draft, written)),
    ...picksSuspects(draft),
    ...selvedgeSuspects(draft),
  ];
}

/** The draft with all edits made that were proved. */
function lastOf(proved: readonly Proved[], draft: UnitDraft): UnitDraft {
  return applyTogether(
    draft,
    proved.flatMap(({ suspect }) => suspect.changes),
  );
}

function leftOf({ findings }: Report, proved: readonly Proved[]): Report["findings"] {
  const known = explained(proved);
  return findings.filter((finding, at) => finding.waived === undefined && !known.has(at));
}

/** Whether a finding is of a kind that speaks for an edit which the telling alone does not. */
function speaksFor({ rule, slipOf }: Suspect, finding: Report["findings"][number]): boolean {
  if (rule !== undefined && rule !== finding.rule) return false;
  return slipOf === undefined || ruleOf(finding).speaksFor === slipOf;
}

/** Suspects of a draft, in which slips of the plan were mended, that may explain what is left. */
type Source = (draft: UnitDraft, base: UnitDraft, left: Report["findings"]) => readonly Suspect[];

/** Where borders are open, the ground may have been begun wrong, or steps of it exchanged. */
const groundSources: Source = (_, base, left) =>
  left.some((finding) => ruleOf(finding).speaksFor === "ground")
    ? [...startSuspects(base), ...uncutSteps(base.ground)]
    : [];

/** A shaft that is drawn and bears no unit, or a threading that is nearly its own mirror, may want another unit. */
function weakUnits(draft: UnitDraft, written: Written, left: Report["findings"]): readonly Suspect[] {
  if (!left.some((finding) => ruleOf(finding).speaksFor === "threading")) return [];
  return writtenAndWhole(written, draft.threading.length, (as) => weakThreadingSuspects(draft, as));
}

const namedSources: Source = (draft, _, left) => [...drawnInVain(draft, left), ...statedWrong(left)];

/** An edit proved, or that of its rivals which explains more. */
function likeliest(
  draft: UnitDraft,
  options: CheckOptions,
  report: Report,
  suspect: Suspect,
): Proved | undefined {
  const own = proofOf(draft, options, report, suspect);
  if (suspect.rivals.length === 0 || report.findings.length === 0) return own;
  let best = own;
  let even = 0;
  for (const [i, changes] of suspect.rivals.slice(0, MOST_RIVALS).entries()) {
    const rivals = [suspect.changes, ...suspect.rivals.filter((other) => other !== changes)];
    const told = suspect.told && [suspect, ...suspect.told.toSpliced(i, 1)];
    const other = proofOf(draft, options, report, {
      ...suspect,
      ...suspect.told?.[i],
      ...(told && { told }),
      changes,
      rivals,
    });
    if (other === undefined) continue;
    const ahead = worth(other, report) - (best === undefined ? 0 : worth(best, report));
    if (ahead > 0) [best, even] = [other, 0];
    else if (ahead === 0) even++;
  }
  if (best === undefined) return undefined;
  // Where the cloth tells one from all others, it is no longer in doubt.
  const told = even === 0 && suspect.rivals.length <= MOST_RIVALS;
  return told
    ? { ...best, suspect: { ...best.suspect, rivals: [], sure: best.suspect.doubted !== true } }
    : best;
}

/** Rivals of one edit that are proved, at most. */
const MOST_RIVALS = 4;

function worth({ added, gone, suspect }: Proved, { findings }: Report): number {
  // Notes are too weak to say which of two edits was meant.
  const explained = gone.reduce((sum, at) => {
    const { severity } = findings[at]!;
    return sum + (severity === "note" || !isEvidence(suspect, findings[at]!) ? 0 : WEIGHT[severity]);
  }, 0);
  return explained - 20 * Math.min(1, added.length);
}

/** The changes that alone make a figure cut or not: of its borders the ground says how they cut, not the figure. */
const OF_CUTS: ReadonlySet<Change["change"]> = new Set([
  ...(["tie", "start-ground", "swap-ground", "ground-threading", "row-picks"] as const),
]);

/** Whether a finding that is gone after an edit speaks for it: with a border of the figure all that is found of it is gone. */
function isEvidence({ changes }: Suspect, finding: Finding): boolean {
  return ruleOf(finding).speaksFor !== "ground" || changes.some(({ change }) => OF_CUTS.has(change));
}

/** Makes an edit and checks the cloth; undefined where it makes no draft. */
function proofOf(
  draft: UnitDraft,
  options: CheckOptions,
  report: Report,
  suspect: Suspect,
): Proved | undefined {
  if (suspect.changes.every(({ change }) => change === "number")) {
    const keys = suspect.changes.map((change) => (change.change === "number" ? change.key : ""));
    const gone = report.findings.flatMap((finding, at) =>
      "stated" in finding && keys.includes(`stated.${finding.stated}`) ? [at] : [],
    );
    return { suspect, gone, added: [] };
  }
  try {
    const { added, gone } = effectOf(report, check(applyTogether(draft, suspect.changes), options));
    return { suspect, gone, added: added.filter(({ severity }) => severity !== "note") };
  } catch (error) {
    if (error instanceof UnitsError) return undefined;
    throw error;
  }
}

function explained(proved: readonly Proved[]): Set<number> {
  return new Set(proved.flatMap(({ gone }) => gone));
}

const WEIGHT: Readonly<Record<Severity, number>> = { error: 30, warning: 10, note: 1 };

/** Bits of the telling from which a slip is a warning though nothing else speaks for it. */
const WARNING_GAIN = 7.5;

/** Findings above a note that all edits together bring; undefined where each brings them by itself. */
function newFaults(
  proved: readonly Proved[],
  draft: UnitDraft,
  options: CheckOptions,
  report: Report,
): readonly Finding[] | undefined {
  if (proved.length < 2 || proved.every(({ added }) => added.length === 0)) return undefined;
  try {
    return effectOf(report, check(lastOf(proved, draft), options)).added;
  } catch (error) {
    if (error instanceof UnitsError) return undefined;
    throw error;
  }
}

function inOrder(proved: readonly Proved[], report: Report, faults: readonly Finding[] | undefined): Cause[] {
  const weight = ({ gone, suspect }: Proved) => {
    const found = gone.map((at) => report.findings[at]!).filter((finding) => isEvidence(suspect, finding));
    const worst = Math.max(0, ...found.map(({ severity }) => WEIGHT[severity]));
    const many = found.reduce(
      (sum, { count = 1, severity }) => sum + WEIGHT[severity] * (1 + Math.log2(count)),
      0,
    );
    if (suspect.onlyNoted === true) return suspect.gain;
    // An error before any number of warnings, a warning before notes.
    return 1e6 * worst + many + suspect.gain;
  };
  const taken = new Set<number>();
  return proved
    .map((one) => ({ one, weight: weight(one) }))
    .sort((a, b) => b.weight - a.weight)
    .map(({ one: { added, gone, suspect } }) => {
      const explains = gone.filter((at) => !taken.has(at));
      for (const at of explains) taken.add(at);
      const { changes, gain, onlyNoted, reason, rivals, slip, told } = suspect;
      const other = rivals.length > 0 && onlyNoted !== true ? told?.[0]?.slip : undefined;
      const or = other && { or: other };
      const { message, why } = sayCause({ slip, reason, ...or });
      // What one edit brings and another takes away again was the other slip's.
      const brings =
        faults === undefined
          ? added
          : added.filter(({ rule }) => faults.some((fault) => fault.rule === rule));
      const sure = suspect.sure && brings.length === 0;
      const worst = explains
        .map((at) => report.findings[at]!)
        .flatMap((finding) => (isEvidence(suspect, finding) ? [finding.severity] : []));
      const severity =
        onlyNoted === true
          ? "note"
          : worst.includes("error")
            ? "error"
            : worst.includes("warning") || gain >= WARNING_GAIN
              ? "warning"
              : "note";
      return { message, severity, slip, ...or, changes, why, reason, explains, sure, rivals };
    });
}
