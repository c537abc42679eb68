import type { BitGrid } from "./bit-grid.js";
import { needGrid } from "./need-grid.js";
import { transpose } from "./transpose.js";

/**
 * Raised interlacements in each row (pick), row 0 first.
 * @param grid the grid to count in
 * @example Array.from(rowCounts(fromText("##.\n..."))) // [0, 2]
 */
export function rowCounts(grid: BitGrid): Uint32Array {
  needGrid(grid);
  const counts = new Uint32Array(grid.rows);
  for (let row = 0; row < grid.rows; row++) {
    let count = 0;
    const end = (row + 1) * grid.stride;
    for (let i = row * grid.stride; i < end; i++) count += onesIn(grid.words[i]!);
    counts[row] = count;
  }
  return counts;
}

/**
 * Raised interlacements in each column (end), column 0 first.
 * @param grid the grid to count in
 * @example Array.from(columnCounts(fromText("##.\n#.."))) // [2, 1, 0]
 */
export function columnCounts(grid: BitGrid): Uint32Array {
  needGrid(grid);
  return rowCounts(transpose(grid));
}

/**
 * Number of 1 bits in a word, counted in all its pairs, nibbles and bytes at once (H. S. Warren, Hacker's Delight,
 * 2nd ed. 2013, section 5-1).
 * @param word 32 bits, signed or unsigned
 * @example onesIn(0b1011) // 3
 */
export function onesIn(word: number): number {
  let w = word - ((word >>> 1) & 0x5555_5555);
  w = (w & 0x3333_3333) + ((w >>> 2) & 0x3333_3333);
  return Math.imul((w + (w >>> 4)) & 0x0f0f_0f0f, 0x0101_0101) >>> 24;
}
