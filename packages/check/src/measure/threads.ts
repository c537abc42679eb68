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
  /** For each kind of row a length that no lowered run of it passes, and then one that no raised run passes. */
  readonly longest: Int32Array;
}

/** The longest of the runs that were counted by length; -1 where there are none. */
export function longestOf(counts: Float64Array): number {
  return counts.findLastIndex((count) => count > 0);
}

/** Where a row's measures go. Of `runs`, the first half counts lowered runs by length, the second half raised ones. */
interface RunCounts {
  readonly table: PieceTable;
  readonly pieces: Uint32Array;
  readonly runs: Float64Array;
  readonly changes: Int32Array;
  readonly longest: Int32Array;
  /** Places in `runs` of the runs that the word at hand closes. */
  readonly closed: Int32Array;
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
  const tally: RunCounts = {
    table,
    pieces: new Uint32Array(table.facts.length),
    runs: new Float64Array(2 * (columns + 1)),
    changes: new Int32Array(count),
    longest: new Int32Array(2 * count),
    closed: new Int32Array(MOST_CLOSED),
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

/** Runs that one word can close: one at the start and one in the middle of each of its pieces. */
const MOST_CLOSED = 8;

function measureRow(grid: BitGrid, kinds: Kinds, kind: number, joined: boolean, tally: RunCounts): void {
  const { words, stride, columns } = grid;
  const { pieces, runs, closed } = tally;
  const { size, facts } = tally.table;
  const times = kinds.times[kind]!;
  const base = kinds.first[kind]! * stride;
  const wholeWords = columns >>> 5;
  const mask = 2 ** size - 1;
  const half = columns + 1;

  // The run being passed: its state, and its length so far.
  let state = words[base]! & 1;
  let run = 0;
  let changes = 0;
  let longestDown = 0;
  let longestUp = 0;

  // In a ground that repeats within 32 threads, word after word is the same. The second of equal words closes the same
  // runs as the third and all after it, so those are only counted, and settled when another word comes.
  let before = 0;
  let equal = 0;
  let again = 0;
  let closing = 0;
  let changing = 0;

  for (let i = 0; i < wholeWords; i++) {
    const word = words[base + i]! | 0;
    if (word === before && equal > 0) {
      if (++equal > 2) {
        again++;
        continue;
      }
    } else {
      if (again > 0) {
        settle(tally, before, closing, times * again);
        changes += changing * again;
        again = 0;
      }
      if (word === -state) {
        // All 32 are as the run is.
        run += 32;
        equal = 0;
        continue;
      }
      before = word;
      equal = 1;
    }
    closing = 0;
    changing = 0;
    for (let shift = 0; shift < 32; shift += size) {
      const piece = (word >>> shift) & mask;
      const fact = facts[piece]!;
      const inside = (fact >>> 10) & 15;
      pieces[piece]! += times;
      if ((piece & 1) !== state) {
        closed[closing++] = state * half + run;
        if (state === 0) {
          if (run > longestDown) longestDown = run;
        } else if (run > longestUp) longestUp = run;
        changing++;
        state ^= 1;
        run = 0;
      }
      run += fact & 31;
      if (inside === 0) continue;
      closed[closing++] = state * half + run;
      if (state === 0) {
        if (run > longestDown) longestDown = run;
      } else if (run > longestUp) longestUp = run;
      changing += inside;
      state = piece >>> (size - 1);
      run = (fact >>> 5) & 31;
      const down = (fact >>> 14) & 15;
      const up = fact >>> 18;
      if (down > longestDown) longestDown = down;
      if (up > longestUp) longestUp = up;
    }
    for (let k = 0; k < closing; k++) runs[closed[k]!]! += times;
    changes += changing;
  }
  if (again > 0) {
    settle(tally, before, closing, times * again);
    changes += changing * again;
  }

  // What is left of the row is less than a word: bit by bit.
  for (let at = wholeWords * 32; at < columns; at++) {
    const bit = (words[base + (at >>> 5)]! >>> (at & 31)) & 1;
    if (bit !== state) {
      runs[state * half + run]! += times;
      if (state === 0) longestDown = Math.max(longestDown, run);
      else longestUp = Math.max(longestUp, run);
      changes++;
      state = bit;
      run = 0;
    }
    run++;
  }

  if (joined && changes > 0) {
    if (state === (words[base]! & 1)) {
      const first = firstRun(grid, base);
      runs[state * half + first]! -= times;
      run += first;
    } else {
      changes++;
    }
  }
  runs[state * half + run]! += times;
  if (state === 0) longestDown = Math.max(longestDown, run);
  else longestUp = Math.max(longestUp, run);
  tally.changes[kind] = changes;
  tally.longest[2 * kind] = longestDown;
  tally.longest[2 * kind + 1] = longestUp;
}

/** The length of the first run of the row that begins at word `base`; the row must change somewhere. */
function firstRun({ words }: BitGrid, base: number): number {
  const flip = (words[base]! & 1) === 1 ? -1 : 0;
  let i = 0;
  while ((words[base + i]! ^ flip) === 0) i++;
  const changed = words[base + i]! ^ flip;
  return i * 32 + 31 - Math.clz32(changed & -changed);
}

/** Counts a word's pieces and the runs it closed as many times more. */
function settle(
  { table, pieces, runs, closed }: RunCounts,
  word: number,
  closing: number,
  times: number,
): void {
  const mask = 2 ** table.size - 1;
  for (let k = 0; k < closing; k++) runs[closed[k]!]! += times;
  for (let shift = 0; shift < 32; shift += table.size) pieces[(word >>> shift) & mask]! += times;
}
