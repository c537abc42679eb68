/**
 * The cloth of a draft. A pick is decided by its lift and its ground step alone, so each such pair is worked out once
 * and copied wherever it comes again; within a pick, 32 ends are worked out at a time.
 */
import { BitGrid } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { checkDraft, draftSize } from "./draft-check.js";
import { distinctSets } from "./shaft-sets.js";
import type { Expansion, UnitDraft } from "./types.js";

/** Bits of a pick, only the words that hold any: word `at[i]` has the bits `bits[i]`. */
interface SparseRow {
  readonly at: number[];
  readonly bits: number[];
}

/**
 * Works a draft out to every end and pick:
 * `raised(e, p) = shaft(e) in R(p) or (drawn(e, p) and shaft(e) not in S(p))`, where pick `p` raises the ground shafts
 * `R(p)` and sinks `S(p)`. Ends run selvedge left, units, selvedge right; the ground threading begins at the first end
 * of unit 1, the treadling at pick 1; both repeat. A selvedge end is never drawn.
 * @throws {UnitsError} for a draft that `checkDraft` refuses
 * @example expand(draft).drawdown.rows // 12
 */
export function expand(draft: UnitDraft): Expansion {
  checkDraft(draft);
  const { ends, picks } = draftSize(draft);
  const stride = (ends + 31) >>> 5;
  const { steps } = draft.ground;
  const unitOfEnd = layUnits(draft, ends);
  const rowOfPick = layRows(draft, picks);
  const stepOfPick = Int32Array.from({ length: picks }, (_, pick) => pick % steps.length);

  const endsOnShaft = groundShafts(draft, unitOfEnd, ends);
  const raised = steps.map(({ raise }) => unite(raise, endsOnShaft, stride));
  const sunk = steps.map(({ sink }) => unite(sink, endsOnShaft, stride));
  const endsDrawn = patternShafts(draft, unitOfEnd);
  const lifts = distinctSets(draft.lifts);

  const drawn = new Uint32Array(picks * stride);
  const drawdown = new Uint32Array(picks * stride);
  const firstOfLift = new Map<number, number>();
  const firstOfPair = new Map<number, number>();
  for (let pick = 0; pick < picks; pick++) {
    const start = pick * stride;
    const step = stepOfPick[pick]!;
    const lift = lifts.indexOf[rowOfPick[pick]!]!;
    const pair = lift * steps.length + step;

    const sameLift = firstOfLift.get(lift);
    if (sameLift === undefined) {
      firstOfLift.set(lift, start);
      const lifted = lifts.distinct[lift]!;
      for (let i = 0; i < lifted.length; i++) raise(drawn, start, endsDrawn[lifted[i]!]);
    } else {
      drawn.copyWithin(start, sameLift, sameLift + stride);
    }

    const samePair = firstOfPair.get(pair);
    if (samePair === undefined) {
      firstOfPair.set(pair, start);
      const up = raised[step]!;
      const down = sunk[step]!;
      for (let w = 0; w < stride; w++) drawdown[start + w] = up[w]! | (drawn[start + w]! & ~down[w]!);
    } else {
      drawdown.copyWithin(start, samePair, samePair + stride);
    }
  }
  return {
    drawdown: BitGrid.own(picks, ends, drawdown),
    drawn: BitGrid.own(picks, ends, drawn),
    unitOfEnd,
    rowOfPick,
    stepOfPick,
  };
}

/** The unit of each end, -1 in the selvedges. */
function layUnits(draft: UnitDraft, ends: number): Int32Array {
  const { unitEnds, threading, selvedge } = draft;
  const unitOfEnd = new Int32Array(ends).fill(-1);
  let end = selvedge?.left?.length ?? 0;
  for (let unit = 0; unit < threading.length; unit++) {
    const next = end + (typeof unitEnds === "number" ? unitEnds : unitEnds[unit]!);
    unitOfEnd.fill(unit, end, next);
    end = next;
  }
  return unitOfEnd;
}

/** The row of each pick. */
function layRows(draft: UnitDraft, picks: number): Int32Array {
  const { picksPerRow, lifts } = draft;
  const rowOfPick = new Int32Array(picks);
  let pick = 0;
  for (let row = 0; row < lifts.length; row++) {
    const next = pick + (typeof picksPerRow === "number" ? picksPerRow : picksPerRow[row]!);
    rowOfPick.fill(row, pick, next);
    pick = next;
  }
  return rowOfPick;
}

/** The ends on each ground shaft. */
function groundShafts(draft: UnitDraft, unitOfEnd: Int32Array, ends: number): SparseRow[] {
  const { threading } = draft.ground;
  const { left = [], right = [] } = draft.selvedge ?? {};
  const rows: SparseRow[] = [];
  for (let end = 0; end < ends; end++) {
    const ofUnits = end - left.length;
    const shaft =
      unitOfEnd[end] !== -1
        ? threading[ofUnits % threading.length]!
        : (left[end] ?? right[end - (ends - right.length)]!);
    addEnd(rows, shaft, end);
  }
  return rows;
}

/** The ends that each pattern shaft draws. */
function patternShafts(draft: UnitDraft, unitOfEnd: Int32Array): SparseRow[] {
  const rows: SparseRow[] = [];
  unitOfEnd.forEach((unit, end) => {
    if (unit !== -1) for (const shaft of draft.threading[unit]!) addEnd(rows, shaft, end);
  });
  return rows;
}

/** Adds `end`, which lies right of every end added before, to the row of `shaft`. */
function addEnd(rows: SparseRow[], shaft: number, end: number): void {
  let row = rows[shaft];
  if (row === undefined) {
    row = { at: [], bits: [] };
    rows[shaft] = row;
  }
  const word = end >>> 5;
  const bit = 1 << (end & 31);
  if (row.at.at(-1) === word) {
    row.bits[row.bits.length - 1]! |= bit;
  } else {
    row.at.push(word);
    row.bits.push(bit);
  }
}

/** The ends on any of `shafts`. */
function unite(shafts: ShaftSet, ends: SparseRow[], stride: number): Uint32Array {
  const words = new Uint32Array(stride);
  for (const shaft of shafts) raise(words, 0, ends[shaft]);
  return words;
}

/** Sets the bits of `row` in the words that begin at `start`; a shaft without ends has no row. */
function raise(words: Uint32Array, start: number, row: SparseRow | undefined): void {
  if (row === undefined) return;
  const { at, bits } = row;
  for (let i = 0; i < at.length; i++) words[start + at[i]!]! |= bits[i]!;
}
