/**
 * Threads that interlace alike. In figured cloth a pick is decided by its lift and its treadle, and most come again, so
 * whatever is measured along a thread is measured once for each kind of thread and counted as often as the kind comes.
 */
import type { BitGrid } from "@drawcord/grid";

/** Threads, or rows of a grid, sorted into kinds: all of one kind are equal bit for bit. */
export interface Kinds {
  /** The kind of each thread, from 0 in order of first appearance. */
  readonly kindOf: Int32Array;
  /** The first thread of each kind. */
  readonly first: Int32Array;
  /** How many threads are of each kind. */
  readonly times: Int32Array;
}

/**
 * Sorts the rows of a grid into kinds, equal ones into one.
 * @example [...kindsOf(fromText("#.\n.#\n#.")).kindOf] // [0, 1, 0]
 */
export function kindsOf(grid: BitGrid): Kinds {
  return sort(
    grid.rows,
    (row) => hash(grid, row * grid.stride),
    (a, b) => sameRow(grid, a, b),
  );
}

/**
 * Sorts threads into kinds by the two numbers that decide each.
 * @example [...kindsOfPairs(Int32Array.of(1, 1, 2, 1), Int32Array.of(5, 6, 5, 5)).kindOf] // [0, 1, 2, 0]
 */
export function kindsOfPairs(one: Int32Array, other: Int32Array): Kinds {
  return sort(
    one.length,
    (thread) => spread(mix(mix(2, one[thread]!), other[thread]!)),
    (a, b) => one[a] === one[b] && other[a] === other[b],
  );
}

/** One pass that looks at whole threads only where hashes meet. */
function sort(
  threads: number,
  hashOf: (thread: number) => number,
  alike: (a: number, b: number) => boolean,
): Kinds {
  const kindOf = new Int32Array(threads);
  const first = new Int32Array(threads);
  const times = new Int32Array(threads);
  let count = 0;
  // Open addressing with twice the room needed: a slot holds a kind + 1, and 0 while it is free.
  const slots = new Int32Array(2 ** Math.ceil(Math.log2(threads * 2 + 2)));
  for (let thread = 0; thread < threads; thread++) {
    let slot = hashOf(thread) & (slots.length - 1);
    while (slots[slot] !== 0 && !alike(first[slots[slot]! - 1]!, thread))
      slot = (slot + 1) & (slots.length - 1);
    if (slots[slot] === 0) {
      first[count++] = thread;
      slots[slot] = count;
    }
    const kind = slots[slot]! - 1;
    kindOf[thread] = kind;
    times[kind]!++;
  }
  return { kindOf, first: first.subarray(0, count), times: times.subarray(0, count) };
}

/** The words of a row from `base` on, mixed into one. */
function hash({ words, stride }: BitGrid, base: number): number {
  let mixed = stride;
  for (let i = base; i < base + stride; i++) mixed = mix(mixed, words[i]!);
  return spread(mixed);
}

/** Mixes one more word in (multipliers of MurmurHash3's, from memory). */
function mix(mixed: number, word: number): number {
  const product = Math.imul(mixed ^ word, 0xcc9e_2d51);
  return (product << 15) | (product >>> 17);
}

/** Lets the high bits of what was mixed have a say in the low ones. */
function spread(mixed: number): number {
  const product = Math.imul(mixed ^ (mixed >>> 16), 0x85eb_ca6b);
  return product ^ (product >>> 13);
}

function sameRow({ words, stride }: BitGrid, a: number, b: number): boolean {
  const shift = (b - a) * stride;
  const end = (a + 1) * stride;
  for (let i = a * stride; i < end; i++) if (words[i] !== words[i + shift]) return false;
  return true;
}
