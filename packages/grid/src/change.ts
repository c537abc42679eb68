import { BitGrid } from "./bit-grid.js";
import { needGrid } from "./need-grid.js";

/**
 * The grid with one interlacement set, `row` and `column` from 0.
 * @param grid the grid to change; it stays as it is
 * @param row the pick, from 0
 * @param column the end, from 0
 * @param raised what the interlacement is to be: true for raised
 * @throws {GridError} `outside` when there is no such row or column
 * @example toText(withCell(fromText(".."), 0, 1, true)) // ".#"
 */
export function withCell(grid: BitGrid, row: number, column: number, raised: boolean): BitGrid {
  needGrid(grid);
  if (grid.get(row, column) === raised) return grid;
  const words = Uint32Array.from(grid.words);
  words[row * grid.stride + (column >>> 5)]! ^= 1 << (column & 31);
  return BitGrid.own(grid.rows, grid.columns, words);
}
