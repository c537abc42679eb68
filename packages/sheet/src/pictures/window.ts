import type { Stretch, Woven } from "../woven.js";

/** Which corner of the cloth, as it is drawn. */
export type Corner = "bottom-left" | "bottom-right" | "top-left" | "top-right";

/** A place in the cloth by its unit and row, both from 1. */
export interface ClothSpot {
  /** The unit, from 1. */
  readonly unit: number;
  /** The row of the lift plan, from 1. */
  readonly row: number;
}

/** The part of a cloth that a drawdown shows, in whole units and rows where they are not too large. */
export interface Window {
  readonly ends: Stretch;
  readonly picks: Stretch;
}

/** Only so many units and rows are searched for a place where figure and ground meet. */
const SEARCHED = 400;

/**
 * The part of a cloth to draw: from a corner, from a unit and row, or, left open, where figure and ground are most evenly
 * shared, the lowest and leftmost of equals.
 */
export function windowOf(
  woven: Woven,
  at: Corner | ClothSpot | undefined,
  mostEnds: number,
  mostPicks: number,
): Window {
  const { ends, picks, unitSpans, rowSpans } = woven;
  if (typeof at === "string") {
    return {
      ends: at.endsWith("left") ? fromStart(unitSpans, ends, mostEnds) : fromEnd(unitSpans, ends, mostEnds),
      picks: at.startsWith("bottom")
        ? fromStart(rowSpans, picks, mostPicks)
        : fromEnd(rowSpans, picks, mostPicks),
    };
  }
  const spot = at ?? meeting(woven, mostEnds, mostPicks);
  return {
    ends: from(unitSpans, spot.unit - 1, ends, mostEnds),
    picks: from(rowSpans, spot.row - 1, picks, mostPicks),
  };
}

/** Where figure and ground are most evenly shared among the windows that begin with a unit and a row. */
function meeting(woven: Woven, mostEnds: number, mostPicks: number): ClothSpot {
  const { squares } = woven.expansion;
  const units = Math.min(SEARCHED, squares.columns);
  const rows = Math.min(SEARCHED, squares.rows);
  const wide = Math.min(units, unitsWithin(woven.unitSpans, mostEnds));
  const high = Math.min(rows, unitsWithin(woven.rowSpans, mostPicks));
  // Sums of the squares below and left of each corner.
  const sums = new Int32Array((units + 1) * (rows + 1));
  const at = (row: number, unit: number) => row * (units + 1) + unit;
  for (let row = 0; row < rows; row++) {
    let sum = 0;
    for (let unit = 0; unit < units; unit++) {
      if (squares.get(row, unit)) sum++;
      sums[at(row + 1, unit + 1)] = sums[at(row, unit + 1)]! + sum;
    }
  }
  let best: ClothSpot = { unit: 1, row: 1 };
  let most = -1;
  for (let row = 0; row + high <= rows; row++) {
    for (let unit = 0; unit + wide <= units; unit++) {
      const drawn =
        sums[at(row + high, unit + wide)]! -
        sums[at(row, unit + wide)]! -
        sums[at(row + high, unit)]! +
        sums[at(row, unit)]!;
      const even = Math.min(drawn, wide * high - drawn);
      if (even <= most) continue;
      most = even;
      best = { unit: unit + 1, row: row + 1 };
    }
  }
  return best;
}

/** Units, or rows, that a number of threads holds; one at least. */
function unitsWithin(spans: readonly Stretch[], most: number): number {
  const first = spans[0]!.start;
  return Math.max(1, spans.filter(({ end }) => end - first <= most).length);
}

/** Whole units from one on; as many threads of it as there is room for where it alone is too large. */
function from(spans: readonly Stretch[], index: number, all: number, most: number): Stretch {
  const { start } = spans[Math.min(index, spans.length - 1)]!;
  if (all - start <= most) return { start, end: all };
  const edges = spans.map(({ end }) => end).filter((end) => end > start && end - start <= most);
  return { start, end: edges.at(-1) ?? start + most };
}

function fromStart(spans: readonly Stretch[], all: number, most: number): Stretch {
  if (all <= most) return { start: 0, end: all };
  const edges = spans.flatMap(({ start, end }) => [start, end]).filter((edge) => edge > 0 && edge <= most);
  return { start: 0, end: edges.at(-1) ?? most };
}

function fromEnd(spans: readonly Stretch[], all: number, most: number): Stretch {
  const turned = spans.map(({ start, end }) => ({ start: all - end, end: all - start })).reverse();
  const { end } = fromStart(turned, all, most);
  return { start: all - end, end: all };
}
