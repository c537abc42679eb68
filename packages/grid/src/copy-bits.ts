import type { ReadonlyWords } from "./bit-grid.js";

/** A stretch of one row: the word where the row begins, and the first bit counted from there. */
export interface BitPlace {
  readonly base: number;
  readonly bit: number;
}

/**
 * Copies `count` bits from one row into another, up to a word at a time. The caller has seen to it that both stretches
 * lie inside their rows.
 */
export function copyBits(
  source: ReadonlyWords,
  from: BitPlace,
  target: Uint32Array,
  to: BitPlace,
  count: number,
): void {
  let read = from.bit;
  let write = to.bit;
  const end = to.bit + count;
  while (write < end) {
    const shift = write & 31;
    const take = Math.min(32 - shift, end - write);
    const word = from.base + (read >>> 5);
    const low = read & 31;
    // The next word is looked at only when the stretch runs into it; shifting by 32 would do nothing at all.
    let bits = source[word]! >>> low;
    if (low + take > 32) bits |= source[word + 1]! << (32 - low);
    const mask = take === 32 ? 0xffff_ffff : ((1 << take) - 1) << shift;
    const at = to.base + (write >>> 5);
    target[at] = (target[at]! & ~mask) | ((bits << shift) & mask);
    read += take;
    write += take;
  }
}
