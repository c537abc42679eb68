/**
 * Neighbouring faults are one finding to a weaver. The squares that each fault lies on are painted on a grid of squares;
 * faults on one connected patch of painted squares are one region. The faults are told twice, once to paint and once to
 * count, so that none need be kept: a cloth may have millions.
 */
import { BitGrid, setBits } from "@drawcord/grid";
import type { Cloth, UnitLayout } from "./cloth.js";
import { type Patches, patchAt, patchesOf } from "./measure/patches.js";
import type { Span } from "./report.js";

/** Told of one fault: first and last end and pick, from 0, and how bad it is. */
export type VisitFault = (
  firstEnd: number,
  lastEnd: number,
  firstPick: number,
  lastPick: number,
  measured: number,
) => void;

/** Neighbouring faults together. */
export interface Region {
  readonly ends: Span;
  readonly picks: Span;
  readonly units?: Span;
  readonly rows?: Span;
  /** How many faults there are, left out when it is one. */
  readonly count?: number;
  /** The worst of them. */
  readonly measured: number;
}

/** Joins faults into regions, in the order of their first squares from the first pick on. */
export function joinFaults(cloth: Cloth, eachFault: (visit: VisitFault) => void): Region[] {
  const { squares } = cloth;
  const { ofEnd, ofPick } = squares;
  const stride = (squares.columns + 31) >>> 5;
  const words = new Uint32Array(squares.rows * stride);
  let painted = false;
  eachFault((firstEnd, lastEnd, firstPick, lastPick) => {
    painted = true;
    for (let row = ofPick[firstPick]!; row <= ofPick[lastPick]!; row++) {
      setBits(words, row * stride, ofEnd[firstEnd]!, ofEnd[lastEnd]! + 1);
    }
  });
  if (!painted) return [];
  const grid = BitGrid.own(squares.rows, squares.columns, words);
  return tally(cloth, patchesOf(grid, { rows: false, columns: false }), eachFault);
}

function tally(cloth: Cloth, patches: Patches, eachFault: (visit: VisitFault) => void): Region[] {
  const { ofEnd, ofPick } = cloth.squares;
  const { count } = patches;
  const faults = new Float64Array(count);
  const worst = new Float64Array(count);
  const firstEnds = new Int32Array(count).fill(cloth.warp.count);
  const lastEnds = new Int32Array(count);
  const firstPicks = new Int32Array(count).fill(cloth.weft.count);
  const lastPicks = new Int32Array(count);
  eachFault((firstEnd, lastEnd, firstPick, lastPick, measured) => {
    const patch = patchAt(patches, ofPick[firstPick]!, ofEnd[firstEnd]!);
    faults[patch]!++;
    if (measured > worst[patch]!) worst[patch] = measured;
    if (firstEnd < firstEnds[patch]!) firstEnds[patch] = firstEnd;
    if (lastEnd > lastEnds[patch]!) lastEnds[patch] = lastEnd;
    if (firstPick < firstPicks[patch]!) firstPicks[patch] = firstPick;
    if (lastPick > lastPicks[patch]!) lastPicks[patch] = lastPick;
  });
  const regions: Region[] = [];
  for (let patch = 0; patch < count; patch++) {
    if (faults[patch] === 0) continue;
    const ends: Span = [firstEnds[patch]! + 1, lastEnds[patch]! + 1];
    const picks: Span = [firstPicks[patch]! + 1, lastPicks[patch]! + 1];
    const times = faults[patch]!;
    regions.push({
      ends,
      picks,
      ...unitsAndRows(cloth, ends, picks),
      ...(times > 1 && { count: times }),
      measured: worst[patch]!,
    });
  }
  return regions;
}

/** The units and rows of a stretch of ends and picks, as far as it lies on any; all counted from 1. */
export function unitsAndRows(
  { layout }: Cloth,
  ends: Span | undefined,
  picks: Span | undefined,
): { units?: Span; rows?: Span } {
  if (layout === undefined) return {};
  const { unitOfEnd, rowOfPick, draft } = layout;
  const left = draft.selvedge?.left?.length ?? 0;
  const right = unitOfEnd.length - (draft.selvedge?.right?.length ?? 0);
  const first = ends && Math.max(ends[0] - 1, left);
  const last = ends && Math.min(ends[1], right) - 1;
  return {
    ...(first !== undefined &&
      last !== undefined &&
      first <= last && { units: [unitOfEnd[first]! + 1, unitOfEnd[last]! + 1] }),
    ...(picks && { rows: [rowOfPick[picks[0] - 1]! + 1, rowOfPick[picks[1] - 1]! + 1] }),
  };
}

/** The picks of a stretch of rows, all counted from 1. */
export function picksOfRows({ rowOfPick }: UnitLayout, [first, last]: Span): Span {
  return [rowOfPick.indexOf(first - 1) + 1, rowOfPick.lastIndexOf(last - 1) + 1];
}
