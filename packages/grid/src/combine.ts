import { BitGrid } from "./bit-grid.js";
import { GridError } from "./error.js";
import { needGrid } from "./need-grid.js";
import { emptyWords } from "./size.js";

/**
 * Raised for lowered and lowered for raised: the back of the cloth, seen through from the face.
 * @param grid the grid to exchange
 * @example toText(complement(fromText("#."))) // ".#"
 */
export function complement(grid: BitGrid): BitGrid {
  needGrid(grid);
  const words = emptyWords(grid.rows, grid.columns);
  for (let i = 0; i < words.length; i++) words[i] = ~grid.words[i]!;
  return BitGrid.own(grid.rows, grid.columns, words);
}

/**
 * Raised where both are.
 * @param a one grid
 * @param b another of the same size
 * @throws {GridError} `unlike-size` when the grids differ in size
 * @example toText(and(fromText("##.."), fromText("#.#."))) // "#..."
 */
export function and(a: BitGrid, b: BitGrid): BitGrid {
  return combine(a, b, (x, y) => x & y);
}

/**
 * Raised where either is.
 * @param a one grid
 * @param b another of the same size
 * @throws {GridError} `unlike-size` when the grids differ in size
 * @example toText(or(fromText("##.."), fromText("#.#."))) // "###."
 */
export function or(a: BitGrid, b: BitGrid): BitGrid {
  return combine(a, b, (x, y) => x | y);
}

/**
 * Raised where the two differ.
 * @param a one grid
 * @param b another of the same size
 * @throws {GridError} `unlike-size` when the grids differ in size
 * @example toText(xor(fromText("##.."), fromText("#.#."))) // ".##."
 */
export function xor(a: BitGrid, b: BitGrid): BitGrid {
  return combine(a, b, (x, y) => x ^ y);
}

/**
 * Raised where the first is and the second is not.
 * @param a the grid to keep raised bits of
 * @param b the grid that lowers them, of the same size
 * @throws {GridError} `unlike-size` when the grids differ in size
 * @example toText(andNot(fromText("##.."), fromText("#.#."))) // ".#.."
 */
export function andNot(a: BitGrid, b: BitGrid): BitGrid {
  return combine(a, b, (x, y) => x & ~y);
}

function combine(a: BitGrid, b: BitGrid, words: (x: number, y: number) => number): BitGrid {
  needGrid(a);
  needGrid(b);
  if (a.rows !== b.rows || a.columns !== b.columns) {
    throw new GridError(
      "unlike-size",
      `grids of ${a.rows} x ${a.columns} and ${b.rows} x ${b.columns} cannot be combined; they need the same rows and columns`,
      { rows: a.rows, columns: a.columns, otherRows: b.rows, otherColumns: b.columns },
    );
  }
  const result = emptyWords(a.rows, a.columns);
  for (let i = 0; i < result.length; i++) result[i] = words(a.words[i]!, b.words[i]!);
  return BitGrid.own(a.rows, a.columns, result);
}
