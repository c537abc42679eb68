import type { BitGrid } from "./bit-grid.js";
import { needGrid } from "./need-grid.js";
import { transpose } from "./transpose.js";

/**
 * Told of one maximal run of equal interlacements: the thread it lies on (row or column), where it begins, how many
 * threads it passes, and whether they are raised. All counted from 0.
 * @param thread the row or column that the run lies on, from 0
 * @param start the column or row that it begins at, from 0
 * @param length how many threads it passes, 1 or more
 * @param raised true when its interlacements are raised
 */
export type RunVisitor = (thread: number, start: number, length: number, raised: boolean) => void;

/**
 * Visits every maximal run along every row, row 0 first, left to right. The lengths of a row's runs add up to `columns`.
 * @param grid the grid to scan
 * @param visit called with each run
 * @example
 * const lengths: number[] = [];
 * scanRowRuns(fromText("#..#"), (_row, _start, length) => lengths.push(length));
 * lengths // [1, 2, 1]
 */
export function scanRowRuns(grid: BitGrid, visit: RunVisitor): void {
  needGrid(grid);
  const { rows, columns, stride, words } = grid;
  if (columns === 0) return;
  for (let row = 0; row < rows; row++) {
    const base = row * stride;
    let raised = (words[base]! & 1) === 1;
    let start = 0;
    let before = raised ? 1 : 0;
    for (let i = 0; i < stride; i++) {
      const word = words[base + i]!;
      // A 1 wherever a bit differs from the one before it, which for the first bit is the last of the word before.
      let changes = word ^ ((word << 1) | before);
      before = word >>> 31;
      while (changes !== 0) {
        const at = i * 32 + 31 - Math.clz32(changes & -changes);
        if (at >= columns) break;
        visit(row, start, at - start, raised);
        raised = !raised;
        start = at;
        changes &= changes - 1;
      }
    }
    visit(row, start, columns - start, raised);
  }
}

/**
 * Visits every maximal run along every column, column 0 first, from row 0 on.
 * @param grid the grid to scan
 * @param visit called with each run; its thread is the column, its start a row
 * @example
 * const lengths: number[] = [];
 * scanColumnRuns(fromText("#\n.\n."), (_column, _start, length) => lengths.push(length));
 * lengths // [2, 1]
 */
export function scanColumnRuns(grid: BitGrid, visit: RunVisitor): void {
  needGrid(grid);
  scanRowRuns(transpose(grid), visit);
}
