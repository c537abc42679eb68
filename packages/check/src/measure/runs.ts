import type { BitGrid } from "@drawcord/grid";

/** Told of a run: where it begins and ends (one past its last), from 0, and its state (1 raised). */
export type VisitRun = (start: number, end: number, state: number) => void;

/** Visits every maximal run of one row of a grid, left to right, stepping from change to change. */
export function eachRun(grid: BitGrid, row: number, visit: VisitRun): void {
  const { words, stride, columns } = grid;
  if (columns === 0) return;
  const base = row * stride;
  let state = words[base]! & 1;
  let start = 0;
  let before = state;
  for (let i = 0; i < stride; i++) {
    const word = words[base + i]!;
    let changes = word ^ ((word << 1) | before);
    before = word >>> 31;
    while (changes !== 0) {
      const at = i * 32 + 31 - Math.clz32(changes & -changes);
      if (at >= columns) break;
      visit(start, at, state);
      state ^= 1;
      start = at;
      changes &= changes - 1;
    }
  }
  visit(start, columns, state);
}

/** All runs of the rows of a grid. */
export interface Runs {
  /** The runs of row `r` are `before[r]` to one before `before[r + 1]`; along a row their states take turns. */
  readonly before: Int32Array;
  /** Where each run begins. It ends where the next one of its row begins, the last of a row at the row's end. */
  readonly start: Int32Array;
}

/** Takes down every maximal run of every row. */
export function rowRuns(grid: BitGrid): Runs {
  const { rows } = grid;
  const before = new Int32Array(rows + 1);
  let count = 0;
  for (let row = 0; row < rows; row++) {
    eachRun(grid, row, () => {
      count++;
    });
    before[row + 1] = count;
  }
  const start = new Int32Array(count);
  count = 0;
  for (let row = 0; row < rows; row++) {
    eachRun(grid, row, (from) => {
      start[count++] = from;
    });
  }
  return { before, start };
}
