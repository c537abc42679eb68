/** Plants slips in sound drafts and measures what the causes say of them. */
import { type CheckOptions, check } from "@drawcord/check";
import { cutOf, isClean } from "@drawcord/ground";
import { applyChanges, type Change, type UnitDraft } from "@drawcord/units";
import { type Cause, findCauses } from "../../src/index.js";
import { type Kind, kinds, plant, sameCloth } from "./plant.js";
import type { Toss } from "./sound.js";

/** A sound draft, and how it was put together. */
export interface Sound {
  readonly family: string;
  readonly draft: UnitDraft;
}

export interface Row {
  readonly kind: Kind;
  planted: number;
  found: number;
  first: number;
  withRivals: number;
  findings: number[];
  back: number;
  other: number;
  regular: number;
  regularFirst: number;
}

export interface Tally {
  readonly rows: readonly Row[];
  readonly families: Record<string, { planted: number; first: number }>;
  readonly pairs: { planted: number; both: number; one: number };
  sound: number;
  alarmed: number;
  noted: number;
  readonly missed: string[];
  readonly wrong: string[];
}

export function newTally(): Tally {
  return {
    rows: kinds.map((kind) => ({
      kind,
      planted: 0,
      found: 0,
      first: 0,
      withRivals: 0,
      findings: [],
      back: 0,
      other: 0,
      regular: 0,
      regularFirst: 0,
    })),
    families: {},
    pairs: { planted: 0, both: 0, one: 0 },
    sound: 0,
    alarmed: 0,
    noted: 0,
    missed: [],
    wrong: [],
  };
}

/** Whether every border of a figure on this ground cuts. */
function cuts({ ground }: UnitDraft): boolean {
  return ground.shafts >= 4 && isClean(cutOf(ground));
}

/** Options under which a sound draft has no findings, as its weaver would have set them. */
function suiting(draft: UnitDraft): CheckOptions {
  const { floats } = check(draft);
  const threads = Math.max(1, ...Object.values(floats).map(({ longest }) => longest));
  const limits = { float: { threads } };
  const noisy = new Set(check(draft, { limits }).findings.map(({ rule }) => rule));
  noisy.add("thin-area");
  return { limits, levels: Object.fromEntries([...noisy].map((rule) => [rule, "off" as const])) };
}

/**
 * Whether the plan is regular around a slip of units or rows: what stands about it, two on either side, comes again
 * elsewhere as it is or backwards, or goes straight in a threading. Slips of anything else lie in what is regular.
 */
function isRegularAround(kind: Kind, draft: UnitDraft, faulty: UnitDraft): boolean {
  const ofRows =
    /row|lift|shaft (missing|extra)/.test(kind) && kind !== "a row held for a wrong number of picks";
  const ofUnits = /unit/.test(kind);
  if (!ofRows && !ofUnits) return true;
  const entries = (sets: readonly (readonly number[])[]) => sets.map((set) => set.join());
  const was = entries(ofRows ? draft.lifts : draft.threading);
  const is = entries(ofRows ? faulty.lifts : faulty.threading);
  const first = was.findIndex((entry, i) => entry !== is[i]);
  let same = 0;
  while (same < Math.min(was.length, is.length) - first && was.at(-1 - same) === is.at(-1 - same)) same++;
  const from = first - 2;
  const to = Math.max(first, was.length - 1 - same) + 2;
  if (first < 0 || from < 0 || to >= was.length) return false;
  const about = was.slice(from, to + 1);
  // In what is blank or held nothing tells one place from the next.
  if (new Set(about).size < 3) return false;
  const steps = about.slice(1).map((entry, i) => Number(entry) - Number(about[i]));
  if (ofUnits && (steps.every((step) => step === 1) || steps.every((step) => step === -1))) return true;
  const back = about.toReversed();
  return was.some((_, at) => {
    if (Math.abs(at - from) < about.length) return false;
    const other = was.slice(at, at + about.length);
    return [about, back].some((one) => one.join(";") === other.join(";"));
  });
}

/** The changes of all sure causes made, those that move places last and from the end on. */
function mended(draft: UnitDraft, causes: readonly Cause[]): UnitDraft {
  const moves = ({ change }: Change) => /insert|remove/.test(change);
  const changes = causes.filter(({ sure }) => sure).flatMap((cause) => cause.changes);
  const place = (change: Change) => ("row" in change ? change.row : "unit" in change ? change.unit : 0);
  return applyChanges(draft, [
    ...changes.filter((change) => !moves(change)),
    ...changes.filter(moves).sort((a, b) => place(b) - place(a)),
  ]);
}

export function measureSound({ draft, family }: Sound, tally: Tally): CheckOptions {
  const options = suiting(draft);
  const { causes } = findCauses(draft, options);
  tally.sound++;
  if (causes.some(({ severity }) => severity !== "note")) {
    tally.alarmed++;
    tally.wrong.push(
      `${family}: ${causes.map(({ message, severity }) => `${severity} ${message}`).join("; ")}`,
    );
  }
  if (causes.length > 0) tally.noted++;
  return options;
}

export function measureSlip(
  { draft, family }: Sound,
  options: CheckOptions,
  kind: Kind,
  toss: Toss,
  tally: Tally,
): void {
  const faulty = plant(kind, draft, toss);
  if (faulty === undefined || sameCloth(draft, faulty)) return;
  // Where the figure does not cut whatever the start, no start is wrong.
  if (kind === "the ground begun a pick late" && !cuts(draft)) return;
  const row = tally.rows.find((one) => one.kind === kind)!;
  tally.families[family] ??= { planted: 0, first: 0 };
  const ofFamily = tally.families[family];
  const report = check(faulty, options);
  const { causes } = findCauses(faulty, options, { report });
  const restores = (changes: readonly Change[]) => sameCloth(applyChanges(faulty, changes), draft);
  const [best] = causes;
  const first = best !== undefined && restores(best.changes);
  const regular = isRegularAround(kind, draft, faulty);
  row.planted++;
  ofFamily.planted++;
  if (causes.length + report.findings.length > 0) row.found++;
  if (first) {
    row.first++;
    ofFamily.first++;
  }
  if (first || best?.rivals.some(restores)) row.withRivals++;
  if (regular) {
    row.regular++;
    if (first) row.regularFirst++;
  }
  if (report.findings.length > 0)
    row.findings.push(report.findings.reduce((sum, { count = 1 }) => sum + count, 0));
  const after = mended(faulty, causes);
  if (sameCloth(after, draft)) row.back++;
  else if (!sameCloth(after, faulty)) {
    row.other++;
    tally.wrong.push(
      `${kind} / ${family} mended otherwise: ${causes
        .filter((c) => c.sure)
        .map(({ message }) => message)
        .join("; ")}`,
    );
  }
  if (!first)
    tally.missed.push(
      `${regular ? "REGULAR " : ""}${kind} / ${family}: ${causes.map(({ message, sure, rivals, explains }) => `${message}<${explains.length}>${sure ? " (sure)" : ` (${rivals.length} rivals)`}`).join("; ") || "nothing"} [${report.findings.length}]`,
    );
}

/** Plants two slips of unlike kinds at once, and counts whether the first two causes undo both, or one of them. */
export function measurePair(
  { draft }: Sound,
  options: CheckOptions,
  pair: readonly [Kind, Kind],
  toss: Toss,
  { pairs }: Tally,
): void {
  const [one, other] = pair.map((kind) => plant(kind, draft, toss));
  if (one === undefined || other === undefined || sameCloth(one, draft) || sameCloth(other, draft)) return;
  const faulty = plantedBoth(draft, one, other);
  if (faulty === undefined) return;
  const named = findCauses(faulty, options).causes.slice(0, 2);
  const undone = (left: UnitDraft) =>
    named.some(({ changes }) => sameCloth(applyChanges(faulty, changes), left));
  pairs.planted++;
  const count = [one, other].filter(undone).length;
  if (count === 2) pairs.both++;
  if (count === 1) pairs.one++;
}

/** A draft with what two slips changed of it, where they changed parts of their own. */
function plantedBoth(draft: UnitDraft, one: UnitDraft, other: UnitDraft): UnitDraft | undefined {
  const parts = ["ground", "threading", "lifts", "picksPerRow", "selvedge"] as const;
  const of = (slipped: UnitDraft) =>
    parts.filter((part) => JSON.stringify(slipped[part]) !== JSON.stringify(draft[part]));
  const [mine, others] = [of(one), of(other)];
  if (mine.some((part) => others.includes(part))) return undefined;
  return { ...one, ...Object.fromEntries(others.map((part) => [part, other[part]])) };
}

/** The table of the bench, a line each. */
export function table({ alarmed, families, noted, pairs, rows, sound }: Tally): string {
  const percent = (part: number, of: number) => (of === 0 ? "-" : `${Math.round((100 * part) / of)} %`);
  const median = (of: readonly number[]) => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? "-";
  const sum = (of: keyof Row) => rows.reduce((all, row) => all + (row[of] as number), 0);
  const line = (cells: readonly (string | number)[]) =>
    `${String(cells[0]).padEnd(42)}${cells
      .slice(1)
      .map((cell) => String(cell).padStart(12))
      .join("")}`;
  const lines = rows.map((row) =>
    line([
      row.kind,
      row.planted,
      percent(row.found, row.planted),
      percent(row.first, row.planted),
      percent(row.regularFirst, row.regular),
      percent(row.withRivals, row.planted),
      `${median(row.findings)} (${Math.max(0, ...row.findings)})`,
      percent(row.back, row.planted),
      percent(row.other, row.planted),
    ]),
  );
  return [
    line(["kind", "planted", "found", "first", "regular", "w/ rivals", "findings", "back", "otherwise"]),
    ...lines,
    line([
      "all",
      sum("planted"),
      percent(sum("found"), sum("planted")),
      percent(sum("first"), sum("planted")),
      percent(sum("regularFirst"), sum("regular")),
      percent(sum("withRivals"), sum("planted")),
      "",
      percent(sum("back"), sum("planted")),
      percent(sum("other"), sum("planted")),
    ]),
    ...Object.entries(families).map(([family, { first, planted }]) =>
      line([`  ${family}`, planted, "", percent(first, planted)]),
    ),
    `${pairs.planted} pairs: ${percent(pairs.both, pairs.planted)} both named by the first two causes, ${percent(pairs.one, pairs.planted)} one of them`,
    `${sound} sound: ${percent(alarmed, sound)} alarmed above a note (${alarmed}), ${percent(noted, sound)} with any (${noted})`,
  ].join("\n");
}
