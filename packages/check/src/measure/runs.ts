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

/** Sets the bits from `start` to one before `end` in the row of words that begins at `base`. */
export function setBits(words: Uint32Array, base: number, start: number, end: number): void {
  for (let at = start; at < end; ) {
    const bit = at & 31;
    const count = Math.min(32 - bit, end - at);
    words[base + (at >>> 5)]! |= (count === 32 ? -1 : 2 ** count - 1) << bit;
    at += count;
  }
}
