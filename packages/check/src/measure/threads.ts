/**
 * Floats and intersections of every thread of one system, by the table of pieces (see pieces.ts). This is the checker's
 * hot loop: a few steps for every 8 or 16 interlacements of each kind of thread.
 */
import type { BitGrid } from "@drawcord/grid";
import type { Kinds } from "./kinds.js";
import { eachInnerRun, type PieceTable, pieceTable } from "./pieces.js";

/** What was measured along the rows of a grid. */
export interface Threads {
  /** Number of runs of raised interlacements by length; entry 0 is always 0. */
  readonly raised: Float64Array;
  /** Number of runs of lowered interlacements by length. */
  readonly lowered: Float64Array;
  /** For each kind of row, how often the state changes along it. */
  readonly changes: Int32Array;
  /** For each kind of row, its longest lowered and then its longest raised run. */
  readonly longest: Int32Array;
}

/** Where a row's measures go. Of `runs`, the first half counts lowered runs by length, the second half raised ones. */
interface Tally {
  readonly table: PieceTable;
  readonly pieces: Uint32Array;
  readonly runs: Float64Array;
  readonly changes: Int32Array;
  readonly longest: Int32Array;
}

/** Cloths of this many different interlacements and more pay for the table of pieces of 16. */
const LARGE = 2 ** 22;

/**
 * Measures every row of a grid.
 * @param joined whether the last interlacement of a row lies beside its first, as in a repeat
 * @param size interlacements in a piece; by default 16 where there are enough to pay for the larger table
 * @example [...measureThreads(fromText("##.#"), kindsOf(fromText("##.#")), false).changes] // [2]
 */
export function measureThreads(grid: BitGrid, kinds: Kinds, joined: boolean, size?: 8 | 16): Threads {
  const { columns } = grid;
  const count = kinds.first.length;
  const table = pieceTable(size ?? (count * columns < LARGE ? 8 : 16));
  const tally: Tally = {
    table,
    pieces: new Uint32Array(table.facts.length),
    runs: new Float64Array(2 * (columns + 1)),
    changes: new Int32Array(count),
    longest: new Int32Array(2 * count),
  };
  if (columns > 0) {
    for (let kind = 0; kind < count; kind++) measureRow(grid, kinds, kind, joined, tally);
  }
  tally.pieces.forEach((times, piece) => {
    if (times === 0) return;
    eachInnerRun(piece, table.size, (state, length) => {
      tally.runs[state * (columns + 1) + length]! += times;
    });
  });
  return {
    raised: tally.runs.subarray(columns + 1),
    lowered: tally.runs.subarray(0, columns + 1),
    changes: tally.changes,
    longest: tally.longest,
  };
}

function measureRow(grid: BitGrid, kinds: Kinds, kind: number, joined: boolean, tally: Tally): void {
  const { words, stride, columns } = grid;
  const { pieces, runs, longest } = tally;
  const { size, facts } = tally.table;
  const times = kinds.times[kind]!;
  const base = kinds.first[kind]! * stride;
  const whole = columns - (columns % size);
  const mask = 2 ** size - 1;
  const half = columns + 1;
  const two = 2 * kind;

  // The run being passed: its state and its length so far.
  let state = words[base]! & 1;
  let run = 0;
  let changes = 0;
  let firstRun = 0;

  for (let at = 0; at < whole; at += size) {
    const piece = (words[base + (at >>> 5)]! >>> (at & 31)) & mask;
    const fact = facts[piece]!;
    pieces[piece]! += times;
    if ((piece & 1) !== state) {
      runs[state * half + run]! += times;
      if (run > longest[two + state]!) longest[two + state] = run;
      if (changes === 0) firstRun = run;
      changes++;
      state = piece & 1;
      run = 0;
    }
    run += fact & 31;
    const inside = (fact >>> 10) & 15;
    if (inside !== 0) {
      runs[state * half + run]! += times;
      if (run > longest[two + state]!) longest[two + state] = run;
      if (changes === 0) firstRun = run;
      changes += inside;
      state = piece >>> (size - 1);
      run = (fact >>> 5) & 31;
      const down = (fact >>> 14) & 15;
      const up = fact >>> 18;
      if (down > longest[two]!) longest[two] = down;
      if (up > longest[two + 1]!) longest[two + 1] = up;
    }
  }

  // What is left of the row is less than a piece: bit by bit.
  for (let at = whole; at < columns; at++) {
    const bit = (words[base + (at >>> 5)]! >>> (at & 31)) & 1;
    if (bit !== state) {
      runs[state * half + run]! += times;
      if (run > longest[two + state]!) longest[two + state] = run;
      if (changes === 0) firstRun = run;
      changes++;
      state = bit;
      run = 0;
    }
    run++;
  }

  if (joined && changes > 0) {
    if (state === (words[base]! & 1)) {
      runs[state * half + firstRun]! -= times;
      run += firstRun;
    } else {
      changes++;
    }
  }
  runs[state * half + run]! += times;
  if (run > longest[two + state]!) longest[two + state] = run;
  tally.changes[kind] = changes;
}
