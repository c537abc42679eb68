/**
 * The open pairs of a figure's borders, stretch by stretch. A stretch is a border as a weaver sees it: between two units
 * along the picks of one row, or between two rows along the ends of one unit. Each weft is judged within its own picks,
 * and picks on which the ground moves every shaft are left out: there the figure has no say.
 */
import type { Cloth, Figure, Squares } from "../cloth.js";
import { acrossPairs, sidePairs, type VisitPairs } from "./borders.js";

/** A pick and the one it meets; the pick itself where its ends meet each other. */
type Meeting = readonly [pick: number, other: number];

/** Told of an open pair: its first end (from 0), its picks, and the open share of its stretch in percent. */
export type VisitOpenPair = (end: number, pick: number, other: number, share: number) => void;

/** Visits the open pairs of ends beside each other, in stretches with more than `allowed` percent open. */
export function eachOpenSide(cloth: Cloth, figure: Figure, allowed: number, visit: VisitOpenPair): void {
  const { ofPick } = cloth.squares;
  let row: Meeting[] = [];
  picksWithSay(cloth).forEach((pick, i, picks) => {
    row.push([pick, pick]);
    if (i < picks.length - 1 && ofPick[picks[i + 1]!] === ofPick[pick]) return;
    judge(cloth, figure, row, allowed, visit);
    row = [];
  });
}

/** Visits the open pairs of picks one after the other, in stretches with more than `allowed` percent open. */
export function eachOpenAcross(cloth: Cloth, figure: Figure, allowed: number, visit: VisitOpenPair): void {
  const { weftOfPick, wefts, warp } = cloth;
  const { kindOf } = figure.kinds;
  const picks = picksWithSay(cloth);
  wefts.forEach((_, weft) => {
    const own = wefts.length === 1 ? picks : picks.filter((pick) => weftOfPick[pick] === weft);
    own.forEach((pick, i) => {
      if (i === own.length - 1 && !warp.joined) return;
      const other = own[(i + 1) % own.length]!;
      if (kindOf[pick] !== kindOf[other]) judge(cloth, figure, [[pick, other]], allowed, visit);
    });
  });
}

/** The picks on which the ground leaves a shaft of the units where the figure puts it. */
function picksWithSay({ plan, weft }: Cloth): number[] {
  const picks = Array.from({ length: weft.grid.rows }, (_, pick) => pick);
  if (plan === undefined) return picks;
  const { steps, threading } = plan.draft.ground;
  const say = steps.map(({ raise, sink }) => {
    const moved = new Set([...raise, ...sink]);
    return threading.some((shaft) => !moved.has(shaft));
  });
  return picks.filter((pick) => say[plan.stepOfPick[pick]!]);
}

function judge(
  cloth: Cloth,
  figure: Figure,
  meetings: readonly Meeting[],
  allowed: number,
  visit: VisitOpenPair,
): void {
  let anyOpen = 0;
  for (const meeting of meetings) {
    pairs(cloth, figure, meeting, (_column, border, cut) => {
      anyOpen |= border & ~cut;
    });
  }
  if (anyOpen === 0) return;
  const shares = openShares(cloth, figure, meetings);
  for (const meeting of meetings) {
    pairs(cloth, figure, meeting, (column, border, cut) => {
      eachBit(border & ~cut, (bit) => {
        const share = shares(column + bit);
        if (share > allowed) visit(column + bit, meeting[0], meeting[1], share);
      });
    });
  }
}

/** The open share of each stretch, in percent, by any of its ends. */
function openShares(cloth: Cloth, figure: Figure, meetings: readonly Meeting[]): (end: number) => number {
  const { ofEnd }: Squares = cloth.squares;
  const open = new Map<number, number>();
  const all = new Map<number, number>();
  for (const meeting of meetings) {
    pairs(cloth, figure, meeting, (column, border, cut) => {
      eachBit(border, (bit) => {
        const square = ofEnd[column + bit]!;
        all.set(square, (all.get(square) ?? 0) + 1);
        if (((cut >>> bit) & 1) === 0) open.set(square, (open.get(square) ?? 0) + 1);
      });
    });
  }
  return (end) => (100 * (open.get(ofEnd[end]!) ?? 0)) / all.get(ofEnd[end]!)!;
}

function pairs({ weft }: Cloth, { drawn }: Figure, [pick, other]: Meeting, visit: VisitPairs): void {
  if (pick === other) sidePairs(weft.grid, drawn, pick, weft.joined, visit);
  else acrossPairs(weft.grid, drawn, pick, other, visit);
}

function eachBit(word: number, visit: (bit: number) => void): void {
  for (let left = word; left !== 0; left &= left - 1) visit(31 - Math.clz32(left & -left));
}
