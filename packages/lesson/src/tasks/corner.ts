/** A small piece of a recipe's cloth where figure and ground meet. */
import type { ShaftSet } from "@drawcord/ground";
import { expand, type UnitDraft } from "@drawcord/units";
import type { Dice } from "../random.js";

/** Some neighbouring ends and picks of a cloth, with all that decides their crossings. */
export interface FigureCorner {
  /** Ground shaft of each end. */
  readonly shafts: readonly number[];
  /** The unit of each end, by its number, from 1. */
  readonly units: readonly number[];
  /** Row of each pick, from 1. */
  readonly rows: readonly number[];
  /** The treadle of each pick, from 1, and what it does. */
  readonly feet: readonly number[];
  readonly treadles: readonly { readonly raise: ShaftSet; readonly sink: ShaftSet }[];
  /** The units drawn in each row that comes in. */
  readonly drawn: readonly { readonly row: number; readonly units: readonly number[] }[];
  /** Whether each end lies over each pick, pick by pick. */
  readonly raised: readonly (readonly boolean[])[];
}

/** What the treadles do, each once, numbered in the order in which the steps of the treadling first press them. */
export function treadlesOf({ steps }: UnitDraft["ground"]): {
  readonly treadles: readonly { readonly raise: ShaftSet; readonly sink: ShaftSet }[];
  /** The treadle of each step, from 1. */
  readonly ofStep: readonly number[];
} {
  const keys = steps.map(({ raise, sink }) => `${raise}/${sink}`);
  const unlike = [...new Set(keys)];
  return {
    treadles: unlike.map((key) => steps[keys.indexOf(key)]!),
    ofStep: keys.map((key) => unlike.indexOf(key) + 1),
  };
}

/** How many places are tried before one is taken where nothing is drawn. */
const TRIES = 400;

/**
 * A piece of a cloth, best one that holds both figure and ground, and two rows.
 * @param ends how many ends at least, whole units
 * @param picks how many picks
 */
export function cornerOf(draft: UnitDraft, dice: Dice, ends: number, picks: number): FigureCorner {
  const expansion = expand(draft);
  let corner = at(draft, expansion, dice, ends, picks);
  for (let tries = 1; tries < TRIES && !isTelling(corner); tries++) {
    corner = at(draft, expansion, dice, ends, picks);
  }
  return corner;
}

function at(
  { ground }: UnitDraft,
  { drawdown, rowOfPick, shaftOfEnd, squares, unitOfEnd }: ReturnType<typeof expand>,
  dice: Dice,
  ends: number,
  picks: number,
): FigureCorner {
  const { ofStep } = treadlesOf(ground);
  const firsts = [...unitOfEnd.keys()].filter(
    (end) =>
      unitOfEnd[end]! >= 0 &&
      unitOfEnd[end - 1] !== unitOfEnd[end] &&
      (unitOfEnd[Math.min(end + ends, unitOfEnd.length) - 1] ?? -1) >= 0,
  );
  const firstEnd = dice.one(firsts.length === 0 ? [0] : firsts);
  // Half of the picks on each side of where two rows meet.
  const row = dice.whole(1, Math.max(1, rowOfPick.at(-1)!));
  const half = rowOfPick.indexOf(row) - Math.floor(picks / 2);
  const firstPick = Math.max(0, Math.min(half, rowOfPick.length - picks));
  const ofEnds = Array.from({ length: Math.min(ends, shaftOfEnd.length - firstEnd) }, (_, i) => firstEnd + i);
  const ofPicks = Array.from({ length: Math.min(picks, rowOfPick.length) }, (_, i) => firstPick + i);
  const rows = ofPicks.map((pick) => rowOfPick[pick]! + 1);
  const units = ofEnds.map((end) => unitOfEnd[end]! + 1);
  return {
    shafts: ofEnds.map((end) => shaftOfEnd[end]!),
    units,
    rows,
    feet: ofPicks.map((pick) => ofStep[pick % ofStep.length]!),
    treadles: ofPicks.map((pick) => {
      const { raise, sink } = ground.steps[pick % ofStep.length]!;
      return { raise, sink };
    }),
    drawn: [...new Set(rows)].map((row) => ({
      row,
      units: [...new Set(units)].filter((unit) => unit > 0 && squares.get(row - 1, unit - 1)),
    })),
    raised: ofPicks.map((pick) => ofEnds.map((end) => drawdown.get(pick, end))),
  };
}

/** Whether both figure and ground are in it, unlike in two rows. */
function isTelling({ drawn, units }: FigureCorner): boolean {
  const all = new Set(units).size;
  const shares = drawn.map((row) => row.units.length);
  const unlike = new Set(drawn.map((row) => row.units.join(" "))).size;
  return shares.some((share) => share > 0 && share < all) && (unlike > 1 || drawn.length === 1);
}
