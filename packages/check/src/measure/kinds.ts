/**
 * Threads that interlace alike. In figured cloth a pick is decided by its lift and its treadle, and most come again, so
 * whatever is measured along a thread is measured once for each kind of thread and counted as often as the kind comes.
 */
import type { BitGrid } from "@drawcord/grid";

/** The rows of a grid sorted into kinds: two rows are of one kind when they are equal bit for bit. */
export interface Kinds {
  /** The kind of each row, from 0 in order of first appearance. */
  readonly kindOf: Int32Array;
  /** The first row of each kind. */
  readonly first: Int32Array;
  /** How many rows are of each kind. */
  readonly times: Int32Array;
}

/**
 * Sorts the rows of a grid into kinds: one pass that hashes each row and compares whole rows only where hashes meet.
 * @example [...kindsOf(fromText("#.\n.#\n#.")).kindOf] // [0, 1, 0]
 */
export function kindsOf(grid: BitGrid): Kinds {
  const { rows, stride } = grid;
  const kindOf = new Int32Array(rows);
  const first: number[] = [];
  const times: number[] = [];
  // Open addressing with twice the room needed: a slot holds a kind + 1, and 0 while it is free.
  const slots = new Int32Array(2 ** Math.ceil(Math.log2(rows * 2 + 2)));
  for (let row = 0; row < rows; row++) {
    let slot = hash(grid, row * stride) & (slots.length - 1);
    while (slots[slot] !== 0 && !sameRow(grid, first[slots[slot]! - 1]!, row)) {
      slot = (slot + 1) & (slots.length - 1);
    }
    if (slots[slot] === 0) {
      first.push(row);
      times.push(0);
      slots[slot] = first.length;
    }
    const kind = slots[slot]! - 1;
    kindOf[row] = kind;
    times[kind]!++;
  }
  return { kindOf, first: Int32Array.from(first), times: Int32Array.from(times) };
}

/** The words of a row from `base` on, mixed into one (multipliers of MurmurHash3's, from memory). */
function hash({ words, stride }: BitGrid, base: number): number {
  let mixed = stride;
  for (let i = base; i < base + stride; i++) {
    mixed = Math.imul(mixed ^ words[i]!, 0xcc9e_2d51);
    mixed = (mixed << 15) | (mixed >>> 17);
  }
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85eb_ca6b);
  return mixed ^ (mixed >>> 13);
}

function sameRow({ words, stride }: BitGrid, a: number, b: number): boolean {
  const shift = (b - a) * stride;
  const end = (a + 1) * stride;
  for (let i = a * stride; i < end; i++) if (words[i] !== words[i + shift]) return false;
  return true;
}
