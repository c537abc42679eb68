import { type BitGrid, fromCells } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";

/**
 * The lift plan that a grid pictures: row by row (row 0 woven first), column `j` raised where shaft `j + 1` is drawn.
 * With `fromText` a picture of `#` and `.`, top line woven last, is a lift plan.
 * @param grid rows are rows of the plan, row 0 woven first; columns are shafts, shaft 1 first
 * @example liftsFromGrid(fromText("..#\n##.")) // [[1, 2], [3]]
 */
export function liftsFromGrid(grid: BitGrid): readonly ShaftSet[] {
  return Array.from({ length: grid.rows }, (_, row) => {
    const shafts: number[] = [];
    for (let column = 0; column < grid.columns; column++) if (grid.get(row, column)) shafts.push(column + 1);
    return shafts;
  });
}

/**
 * The picture of a lift plan: a row a lift, column `j` raised where shaft `j + 1` is drawn.
 * @param lifts the shafts drawn in each row, row 1 first
 * @param shafts how many columns; by default up to the highest shaft drawn
 * @throws {UnitsError} `outside-harness` when a lift draws a shaft above `shafts`
 * @example toText(gridFromLifts([[1, 2], [3]])) // "..#\n##."
 */
export function gridFromLifts(lifts: readonly ShaftSet[], shafts?: number): BitGrid {
  const highest = lifts.reduce((most, row) => Math.max(most, row.at(-1) ?? 0), 0);
  if (shafts !== undefined && highest > shafts) {
    throw new UnitsError(
      "outside-harness",
      `the lift plan draws shaft ${highest}; the picture has room for shafts 1 to ${shafts}`,
      { shaft: highest, shafts },
    );
  }
  const drawn = lifts.map((row) => new Set(row));
  return fromCells(lifts.length, shafts ?? highest, (row, column) => drawn[row]!.has(column + 1));
}
