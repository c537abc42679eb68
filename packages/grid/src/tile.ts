import { BitGrid } from "./bit-grid.js";
import { copyBits } from "./copy-bits.js";
import { GridError } from "./error.js";
import { needGrid } from "./need-grid.js";
import { checkSize, emptyWords, strideOf } from "./size.js";

/**
 * A grid of the wanted size, filled with repeats of `grid` from its first row and column on; the last repeats may be cut.
 * @param grid the repeat
 * @param rows number of picks of the result
 * @param columns number of ends of the result
 * @throws {GridError} `bad-size` when the size cannot be, or when there is nothing to repeat
 * @example toText(tile(fromText(".#\n#."), 2, 5)) // ".#.#.\n#.#.#"
 */
export function tile(grid: BitGrid, rows: number, columns: number): BitGrid {
  needGrid(grid);
  checkSize(rows, columns);
  if (rows > 0 && columns > 0 && (grid.rows === 0 || grid.columns === 0)) {
    throw new GridError(
      "bad-size",
      `a grid of ${grid.rows} rows and ${grid.columns} columns has nothing to repeat over ${rows} rows and ${columns} columns`,
      { rows: grid.rows, columns: grid.columns },
    );
  }
  const words = emptyWords(rows, columns);
  const stride = strideOf(columns);
  for (let row = 0; row < Math.min(rows, grid.rows); row++) {
    const base = row * stride;
    const first = Math.min(grid.columns, columns);
    copyBits(grid.words, { base: row * grid.stride, bit: 0 }, words, { base, bit: 0 }, first);
    // What is filled doubles with each copy, so that narrow weaves fill wide rows quickly.
    for (let filled = first; filled < columns; ) {
      const count = Math.min(filled, columns - filled);
      copyBits(words, { base, bit: 0 }, words, { base, bit: filled }, count);
      filled += count;
    }
  }
  const repeat = grid.rows * stride;
  for (let at = repeat; at < words.length; at += repeat) {
    words.copyWithin(at, 0, Math.min(repeat, words.length - at));
  }
  return BitGrid.own(rows, columns, words);
}
