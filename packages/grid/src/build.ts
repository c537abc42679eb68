import { BitGrid } from "./bit-grid.js";
import { GridError } from "./error.js";
import { needGrid } from "./need-grid.js";
import { emptyWords, strideOf } from "./size.js";

/**
 * A grid all lowered, or all raised.
 * @param rows number of picks
 * @param columns number of ends
 * @param raised what every interlacement is: true for raised; lowered by default
 * @throws {GridError} `bad-size` when a side is negative, a fraction or too large
 * @example toText(blank(2, 3)) // "...\n..."
 */
export function blank(rows: number, columns: number, raised = false): BitGrid {
  const words = emptyWords(rows, columns);
  return BitGrid.own(rows, columns, raised ? words.fill(0xffff_ffff) : words);
}

/**
 * A grid from a question asked of every interlacement: is the end of `column` raised on the pick of `row`?
 * @param rows number of picks
 * @param columns number of ends
 * @param raised asked once for each interlacement, row after row, with its row and column from 0; true where raised
 * @throws {GridError} `bad-size` when a side is negative, a fraction or too large
 * @example toText(fromCells(2, 2, (row, column) => row === column)) // ".#\n#."
 */
export function fromCells(
  rows: number,
  columns: number,
  raised: (row: number, column: number) => boolean,
): BitGrid {
  const words = emptyWords(rows, columns);
  const stride = strideOf(columns);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (raised(row, column)) words[row * stride + (column >>> 5)]! |= 1 << (column & 31);
    }
  }
  return BitGrid.own(rows, columns, words);
}

/**
 * A grid from rows of booleans, row 0 (woven first) first; the first row tells the number of columns.
 * @param rows a list a pick, each with a boolean an end, true for raised; all of one length
 * @throws {GridError} `uneven-rows` when a row is longer or shorter than the first
 * @example toText(fromBooleans([[true, false]])) // "#."
 */
export function fromBooleans(rows: readonly (readonly boolean[])[]): BitGrid {
  const columns = rows[0]?.length ?? 0;
  for (const [row, cells] of rows.entries()) {
    if (cells.length !== columns) {
      throw new GridError(
        "uneven-rows",
        `row ${row + 1} has ${cells.length} columns; the first row has ${columns}`,
        {
          row: row + 1,
          found: cells.length,
          expected: columns,
        },
      );
    }
  }
  return fromCells(rows.length, columns, (row, column) => rows[row]![column]!);
}

/**
 * The rows of a grid as booleans, row 0 first.
 * @param grid the grid to read
 * @example toBooleans(fromText("#.")) // [[true, false]]
 */
export function toBooleans(grid: BitGrid): boolean[][] {
  needGrid(grid);
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (_, column) => grid.get(row, column)),
  );
}
