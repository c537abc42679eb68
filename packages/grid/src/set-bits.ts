/**
 * Raises a stretch of one row, a word at a time, in words that are still to become a grid: from column `start` to the
 * one before `end` of the row whose words begin at `base`.
 * @param words the words to change in place, lowest bit first
 * @param base index of the first word of the row
 * @param start first column to raise, from 0
 * @param end the column after the last one to raise
 * @example
 * const words = new Uint32Array(1);
 * setBits(words, 0, 1, 3);
 * toText(BitGrid.own(1, 4, words)) // ".##."
 */
export function setBits(words: Uint32Array, base: number, start: number, end: number): void {
  for (let at = start; at < end; ) {
    const bit = at & 31;
    const count = Math.min(32 - bit, end - at);
    words[base + (at >>> 5)]! |= (-1 >>> (32 - count)) << bit;
    at += count;
  }
}
