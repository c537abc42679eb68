/**
 * Connected patches of equal squares, by runs: each run of a row joins the runs of the same state that it touches in the
 * row before (disjoint sets with path halving, R. E. Tarjan and J. van Leeuwen, "Worst-case analysis of set union
 * algorithms", Journal of the ACM 31, 1984).
 */
import type { BitGrid } from "@drawcord/grid";
import { type Runs, rowRuns } from "./runs.js";

/** The patches of a grid, in the order in which their first squares come; places are from 0, the last included. */
export interface Patches {
  readonly count: number;
  /** 1 where the patch is of 1 bits. */
  readonly state: Uint8Array;
  readonly squares: Float64Array;
  readonly firstRow: Int32Array;
  readonly lastRow: Int32Array;
  readonly firstColumn: Int32Array;
  readonly lastColumn: Int32Array;
  readonly runs: Runs;
  readonly patchOfRun: Int32Array;
}

/** Whether the last row lies beside the first, and the last column beside the first. */
export interface Joins {
  readonly rows: boolean;
  readonly columns: boolean;
}

/**
 * Finds the patches of 0 bits and of 1 bits, connected over their sides (not their corners).
 * @example patchesOf(fromText("#.\n.#"), { rows: false, columns: false }).count // 4
 */
export function patchesOf(grid: BitGrid, joins: Joins): Patches {
  const { rows, columns } = grid;
  const runs = rowRuns(grid);
  const { before, start } = runs;
  const parent = start.map((_, run) => run);

  const firstState = (row: number) => grid.words[row * grid.stride]! & 1;
  const joinRows = (row: number, other: number) => {
    let b = before[other]!;
    const lastB = before[other + 1]! - 1;
    const lastA = before[row + 1]! - 1;
    const unlike = firstState(row) ^ firstState(other) ^ ((before[row]! - b) & 1);
    for (let a = before[row]!; a <= lastA; a++) {
      const end = a === lastA ? columns : start[a + 1]!;
      for (;;) {
        if (((a - b) & 1) === unlike) unite(parent, a, b);
        const endB = b === lastB ? columns : start[b + 1]!;
        if (endB > end || b === lastB) break;
        b++;
        if (endB === end) break;
      }
    }
  };
  if (columns > 0) {
    for (let row = 1; row < rows; row++) joinRows(row, row - 1);
    if (joins.rows && rows > 1) joinRows(0, rows - 1);
    if (joins.columns) {
      for (let row = 0; row < rows; row++) {
        const first = before[row]!;
        const last = before[row + 1]! - 1;
        if (((last - first) & 1) === 0) unite(parent, first, last);
      }
    }
  }
  return gather(grid, runs, parent);
}

/** The patch of a square. */
export function patchAt(patches: Patches, row: number, column: number): number {
  const { runs, patchOfRun } = patches;
  const { before, start } = runs;
  let low = before[row]!;
  let high = before[row + 1]! - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if (start[middle]! <= column) low = middle;
    else high = middle - 1;
  }
  return patchOfRun[low]!;
}

function root(parent: Int32Array, run: number): number {
  let at = run;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]!]!;
    at = parent[at]!;
  }
  return at;
}

/** Joins two sets; the earlier run stays the root, so that a root comes before all its runs. */
function unite(parent: Int32Array, a: number, b: number): void {
  const x = root(parent, a);
  const y = root(parent, b);
  if (x < y) parent[y] = x;
  else parent[x] = y;
}

function gather(grid: BitGrid, runs: Runs, parent: Int32Array): Patches {
  const { rows, columns } = grid;
  const { before, start } = runs;
  const patchOfRun = new Int32Array(parent.length);
  let count = 0;
  for (let run = 0; run < parent.length; run++) {
    const top = root(parent, run);
    patchOfRun[run] = top === run ? count++ : patchOfRun[top]!;
  }
  const patches: Patches = {
    count,
    state: new Uint8Array(count),
    squares: new Float64Array(count),
    firstRow: new Int32Array(count).fill(rows),
    lastRow: new Int32Array(count),
    firstColumn: new Int32Array(count).fill(columns),
    lastColumn: new Int32Array(count),
    runs,
    patchOfRun,
  };
  const { state, squares, firstRow, lastRow, firstColumn, lastColumn } = patches;
  for (let row = 0; row < rows; row++) {
    const first = before[row]!;
    const last = before[row + 1]! - 1;
    const firstState = columns > 0 ? grid.words[row * grid.stride]! & 1 : 0;
    for (let run = first; run <= last; run++) {
      const patch = patchOfRun[run]!;
      const from = start[run]!;
      const end = run === last ? columns : start[run + 1]!;
      state[patch] = firstState ^ ((run - first) & 1);
      squares[patch]! += end - from;
      if (row < firstRow[patch]!) firstRow[patch] = row;
      if (row > lastRow[patch]!) lastRow[patch] = row;
      if (from < firstColumn[patch]!) firstColumn[patch] = from;
      if (end - 1 > lastColumn[patch]!) lastColumn[patch] = end - 1;
    }
  }
  return patches;
}
