import type { BitGrid } from "@drawcord/grid";
import type { Kinds } from "./kinds.js";
import type { Runs } from "./runs.js";
import type { Edges } from "./squares.js";

/** Where the figure turns from undrawn to drawn and back along the threads of each kind of squares. */
export interface FigureLines {
  /** Whether the first interlacement along the kind is drawn (1). */
  readonly first: Uint8Array;
  /** The borders of kind `k` are `borders[before[k]]` to one before `borders[before[k + 1]]`. */
  readonly before: Int32Array;
  /** The places that are drawn after one that is not, or the other way round, ascending within a kind. */
  readonly borders: Int32Array;
}

/**
 * The borders along the rows of a grid of squares, one line for each kind of row; after these comes one more line, of
 * threads that lie on no square and are drawn nowhere.
 * @param runs the runs of the squares' rows
 * @param edges the threads of each column of squares
 * @param length how many threads there are; those outside all columns are undrawn
 */
export function figureLines(
  { words, stride, rows, columns }: BitGrid,
  runs: Runs,
  kinds: Kinds,
  edges: Edges,
  length: number,
): FigureLines {
  const count = kinds.first.length;
  const first = new Uint8Array(count + 1);
  const before = new Int32Array(count + 2);
  // A row has a border between its runs, and one more where its last run is drawn and a selvedge lies beside it.
  const borders = new Int32Array(runs.start.length + rows);
  let next = 0;
  for (let kind = 0; kind < count; kind++) {
    const row = kinds.first[kind]!;
    const end = runs.before[row + 1]!;
    let drawn = words[row * stride]! & 1;
    for (let run = runs.before[row]!; run < end; run++) {
      if (drawn === 1) {
        const from = edges.first[runs.start[run]!]!;
        const to = edges.last[(run + 1 < end ? runs.start[run + 1]! : columns) - 1]! + 1;
        if (from === 0) first[kind] = 1;
        else borders[next++] = from;
        if (to < length) borders[next++] = to;
      }
      drawn ^= 1;
    }
    before[kind + 1] = next;
  }
  before[count + 1] = next;
  return { first, before, borders: borders.subarray(0, next) };
}
