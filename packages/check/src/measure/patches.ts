/**
 * Connected patches of equal squares, by runs: each run of a row joins the runs of the same state that it touches in the
 * row before (disjoint sets with path halving, R. E. Tarjan and J. van Leeuwen, "Worst-case analysis of set union
 * algorithms", Journal of the ACM 31, 1984).
 */
import type { BitGrid } from "@drawcord/grid";
import { eachRun } from "./runs.js";

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
  /** The runs of row `r` are `runsBefore[r]` to one before `runsBefore[r + 1]`. */
  readonly runsBefore: Int32Array;
  readonly runStart: Int32Array;
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
  const runsBefore = new Int32Array(rows + 1);
  for (let row = 0; row < rows; row++) {
    let count = 0;
    eachRun(grid, row, () => {
      count++;
    });
    runsBefore[row + 1] = runsBefore[row]! + count;
  }
  const runs = runsBefore[rows]!;
  const runStart = new Int32Array(runs + 1);
  const parent = new Int32Array(runs);
  let next = 0;
  for (let row = 0; row < rows; row++) {
    eachRun(grid, row, (start) => {
      runStart[next] = start;
      parent[next] = next;
      next++;
    });
  }

  const firstState = (row: number) => grid.words[row * grid.stride]! & 1;
  const joinRows = (row: number, other: number) => {
    let b = runsBefore[other]!;
    const lastB = runsBefore[other + 1]! - 1;
    const lastA = runsBefore[row + 1]! - 1;
    const unlike = firstState(row) ^ firstState(other) ^ ((runsBefore[row]! - b) & 1);
    for (let a = runsBefore[row]!; a <= lastA; a++) {
      const end = a === lastA ? columns : runStart[a + 1]!;
      for (;;) {
        if (((a - b) & 1) === unlike) unite(parent, a, b);
        const endB = b === lastB ? columns : runStart[b + 1]!;
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
        const first = runsBefore[row]!;
        const last = runsBefore[row + 1]! - 1;
        if (((last - first) & 1) === 0) unite(parent, first, last);
      }
    }
  }
  return gather(grid, runsBefore, runStart, parent);
}

/** The patch of a square. */
export function patchAt(patches: Patches, row: number, column: number): number {
  const { runsBefore, runStart, patchOfRun } = patches;
  let low = runsBefore[row]!;
  let high = runsBefore[row + 1]! - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if (runStart[middle]! <= column) low = middle;
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

function gather(grid: BitGrid, runsBefore: Int32Array, runStart: Int32Array, parent: Int32Array): Patches {
  const { rows, columns } = grid;
  const runs = parent.length;
  const patchOfRun = new Int32Array(runs);
  let count = 0;
  for (let run = 0; run < runs; run++) {
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
    runsBefore,
    runStart,
    patchOfRun,
  };
  const { state, squares, firstRow, lastRow, firstColumn, lastColumn } = patches;
  for (let row = 0; row < rows; row++) {
    const first = runsBefore[row]!;
    const last = runsBefore[row + 1]! - 1;
    const firstState = columns > 0 ? grid.words[row * grid.stride]! & 1 : 0;
    for (let run = first; run <= last; run++) {
      const patch = patchOfRun[run]!;
      const start = runStart[run]!;
      const end = run === last ? columns : runStart[run + 1]!;
      state[patch] = firstState ^ ((run - first) & 1);
      squares[patch]! += end - start;
      if (row < firstRow[patch]!) firstRow[patch] = row;
      if (row > lastRow[patch]!) lastRow[patch] = row;
      if (start < firstColumn[patch]!) firstColumn[patch] = start;
      if (end - 1 > lastColumn[patch]!) lastColumn[patch] = end - 1;
    }
  }
  return patches;
}
