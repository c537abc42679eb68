import { BitGrid } from "./bit-grid.js";
import { copyBits } from "./copy-bits.js";
import { GridError } from "./error.js";
import { needGrid } from "./need-grid.js";
import { checkSize, emptyWords } from "./size.js";

/** A rectangle of a grid, its first row and column counted from 0. */
export interface Rectangle {
  /** The first row, from 0. */
  readonly row: number;
  /** The first column, from 0. */
  readonly column: number;
  /** How many rows. */
  readonly rows: number;
  /** How many columns. */
  readonly columns: number;
}

/** The rectangle lies inside the grid. */
function checkInside(grid: BitGrid, { row, column, rows, columns }: Rectangle): void {
  checkSize(rows, columns);
  const whole = Number.isInteger(row) && Number.isInteger(column);
  if (!whole || row < 0 || column < 0 || row + rows > grid.rows || column + columns > grid.columns) {
    throw new GridError(
      "outside",
      `${rows} rows and ${columns} columns from row ${row}, column ${column} do not lie inside a grid of ${grid.rows} rows and ${grid.columns} columns`,
      { row, column, rows, columns, gridRows: grid.rows, gridColumns: grid.columns },
    );
  }
}

/**
 * The part of a grid inside a rectangle.
 * @param grid the grid to cut from
 * @param rectangle first row and column, from 0, and how many rows and columns
 * @throws {GridError} `outside` when the rectangle does not lie inside the grid; `bad-size` when it cannot be
 * @example toText(crop(fromText("##.\n#.#"), { row: 0, column: 1, rows: 2, columns: 2 })) // "#.\n.#"
 */
export function crop(grid: BitGrid, rectangle: Rectangle): BitGrid {
  needGrid(grid);
  checkInside(grid, rectangle);
  const { row, column, rows, columns } = rectangle;
  const words = emptyWords(rows, columns);
  const stride = words.length / (rows || 1);
  for (let r = 0; r < rows; r++) {
    const from = { base: (row + r) * grid.stride, bit: column };
    copyBits(grid.words, from, words, { base: r * stride, bit: 0 }, columns);
  }
  return BitGrid.own(rows, columns, words);
}

/**
 * The grid with a patch laid over it, the patch's first row and column at `row` and `column` (from 0).
 * @param grid the grid below; it stays as it is
 * @param patch the grid that is laid over it; its lowered bits cover too
 * @param row row of the grid that the patch's row 0 comes to lie on, from 0
 * @param column column of the grid that the patch's column 0 comes to lie on, from 0
 * @throws {GridError} `outside` when the patch does not lie inside the grid
 * @example toText(paste(blank(2, 3), fromText("##"), 1, 1)) // ".##\n..."
 */
export function paste(grid: BitGrid, patch: BitGrid, row: number, column: number): BitGrid {
  needGrid(grid);
  checkInside(grid, { row, column, rows: patch.rows, columns: patch.columns });
  const words = Uint32Array.from(grid.words);
  for (let r = 0; r < patch.rows; r++) {
    const to = { base: (row + r) * grid.stride, bit: column };
    copyBits(patch.words, { base: r * patch.stride, bit: 0 }, words, to, patch.columns);
  }
  return BitGrid.own(grid.rows, grid.columns, words);
}
