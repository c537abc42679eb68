import type { BitGrid } from "@drawcord/grid";
import type { Squares, UnitLayout } from "../cloth.js";

/** Threads on a side of a square where a cloth has no units and rows to count by (common practice: a bold line of squared paper every 4). */
const PLAIN_SQUARE = 4;

/** Units by rows, with a column of squares for either selvedge. */
export function draftSquares({ draft, unitOfEnd, rowOfPick }: UnitLayout): Squares {
  const units = draft.threading.length;
  const left = draft.selvedge?.left?.length ?? 0;
  return {
    ofEnd: unitOfEnd.map((unit, end) => (unit >= 0 ? unit + 1 : end < left ? 0 : units + 1)),
    ofPick: rowOfPick,
    columns: units + 2,
    rows: draft.lifts.length,
  };
}

/** Squares of a few threads each way, for a drawdown without a plan. */
export function plainSquares(drawdown: BitGrid): Squares {
  const place = (_: unknown, thread: number) => Math.floor(thread / PLAIN_SQUARE);
  return {
    ofEnd: Int32Array.from({ length: drawdown.columns }, place),
    ofPick: Int32Array.from({ length: drawdown.rows }, place),
    columns: Math.ceil(drawdown.columns / PLAIN_SQUARE),
    rows: Math.ceil(drawdown.rows / PLAIN_SQUARE),
  };
}

/** First and last thread (from 0) of each unit, or of each row; -1 and -2 for one that has none. */
export interface Edges {
  readonly first: Int32Array;
  readonly last: Int32Array;
}

/** The ends of each unit. */
export function unitEdges({ draft, unitOfEnd }: UnitLayout): Edges {
  return edges(unitOfEnd, draft.threading.length);
}

/** The picks of each row. */
export function rowEdges({ draft, rowOfPick }: UnitLayout): Edges {
  return edges(rowOfPick, draft.lifts.length);
}

function edges(of: Int32Array, count: number): Edges {
  const first = new Int32Array(count).fill(-1);
  const last = new Int32Array(count).fill(-2);
  of.forEach((square, thread) => {
    if (square < 0) return;
    if (first[square] === -1) first[square] = thread;
    last[square] = thread;
  });
  return { first, last };
}
