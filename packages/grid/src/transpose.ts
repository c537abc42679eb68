import { BitGrid, type ReadonlyWords } from "./bit-grid.js";
import { needGrid } from "./need-grid.js";
import { emptyWords, strideOf } from "./size.js";

/**
 * Ends for picks and picks for ends: row r, column c of the grid is row c, column r of the result.
 * @param grid the grid to transpose
 * @example toText(transpose(fromText("##\n..\n.."))) // "..#\n..#"
 */
export function transpose(grid: BitGrid): BitGrid {
  needGrid(grid);
  const words = emptyWords(grid.columns, grid.rows);
  const stride = strideOf(grid.rows);
  const block = new Uint32Array(32);
  for (let row = 0; row < grid.rows; row += 32) {
    for (let word = 0; word < grid.stride; word++) {
      load(grid.words, row * grid.stride + word, grid.stride, block, Math.min(32, grid.rows - row));
      turnOver(block);
      const columns = Math.min(32, grid.columns - word * 32);
      for (let i = 0; i < columns; i++) words[(word * 32 + i) * stride + (row >>> 5)] = block[i]!;
    }
  }
  return BitGrid.own(grid.columns, grid.rows, words);
}

/** One word of each of up to 32 rows into the block; what an earlier block left behind them falls past the last column. */
function load(words: ReadonlyWords, first: number, stride: number, block: Uint32Array, rows: number): void {
  for (let i = 0; i < rows; i++) block[i] = words[first + i * stride]!;
}

/**
 * Transposes a block of 32 x 32 bits where it lies: swap its off-diagonal quarters, then the quarters' quarters, five
 * times over, all blocks of a size at once (H. S. Warren, Hacker's Delight, 2nd ed. 2013, section 7-3).
 */
function turnOver(block: Uint32Array): void {
  let mask = 0x0000_ffff;
  for (let size = 16; size !== 0; size >>>= 1) {
    for (let k = 0; k < 32; k = ((k | size) + 1) & ~size) {
      const swap = ((block[k]! >>> size) ^ block[k | size]!) & mask;
      block[k]! ^= swap << size;
      block[k | size]! ^= swap;
    }
    mask ^= mask << (size >>> 1);
  }
}
