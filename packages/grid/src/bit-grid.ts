/**
 * Layout. A row of `columns` bits fills `stride = ceil(columns / 32)` words; bit `j` of a row is bit `j & 31` of word
 * `j >>> 5`, lowest first. Bits past the last column are always 0, so that rows compare and count as whole words.
 */
import { GridError } from "./error.js";
import { checkSize } from "./size.js";

/** The words of a grid, to look at and not to touch. */
export interface ReadonlyWords extends Iterable<number> {
  readonly length: number;
  readonly [index: number]: number;
}

/**
 * A matrix of bits: rows are picks (row 0 woven first), columns are ends, a bit is 1 where the end is raised.
 * It never changes; every change is a new grid.
 */
export class BitGrid {
  readonly rows: number;
  readonly columns: number;
  /** Words in a row: `ceil(columns / 32)`. */
  readonly stride: number;
  /** `rows * stride` unsigned 32-bit words, row after row; bits past the last column are 0. */
  readonly words: ReadonlyWords;

  /** For the modules of this package, which keep the promise about the bits past the last column; others use the builders. */
  private constructor(rows: number, columns: number, words: Uint32Array) {
    this.rows = rows;
    this.columns = columns;
    this.stride = (columns + 31) >>> 5;
    this.words = words;
  }

  /**
   * A grid from its words, row after row, `ceil(columns / 32)` words a row, lowest bit first; they are copied, and bits
   * past the last column are dropped.
   * @throws {GridError} `bad-size` when a side is negative, a fraction or too large; `wrong-length` when the number of
   * words is not `rows * ceil(columns / 32)`
   * @example toText(BitGrid.fromWords(1, 3, [0b101])) // "#.#"
   */
  static fromWords(rows: number, columns: number, words: ArrayLike<number>): BitGrid {
    checkSize(rows, columns);
    const stride = (columns + 31) >>> 5;
    if (words.length !== rows * stride) {
      throw new GridError(
        "wrong-length",
        `${rows} rows of ${columns} columns take ${rows * stride} words; ${words.length} were given`,
        { rows, columns, expected: rows * stride, found: words.length },
      );
    }
    const own = Uint32Array.from(words);
    const spare = columns & 31;
    if (spare !== 0) {
      const mask = 2 ** spare - 1;
      for (let last = stride - 1; last < own.length; last += stride) own[last]! &= mask;
    }
    return new BitGrid(rows, columns, own);
  }

  /** As `fromWords`, for words that are the grid's from now on: not copied, spare bits 0 already. */
  static own(rows: number, columns: number, words: Uint32Array): BitGrid {
    return new BitGrid(rows, columns, words);
  }

  /**
   * Whether the end of `column` is raised on the pick of `row`, both from 0.
   * @throws {GridError} `outside` when there is no such row or column
   * @example fromText("#.").get(0, 0) // true
   */
  get(row: number, column: number): boolean {
    if (!(row >= 0 && row < this.rows && column >= 0 && column < this.columns)) {
      throw new GridError(
        "outside",
        `row ${row}, column ${column} lies outside a grid of ${this.rows} rows and ${this.columns} columns`,
        { row, column, rows: this.rows, columns: this.columns },
      );
    }
    return ((this.words[row * this.stride + (column >>> 5)]! >>> (column & 31)) & 1) === 1;
  }

  /**
   * Whether both grids have the same size and the same bits.
   * @example fromText("#.").equals(fromText("#.")) // true
   */
  equals(other: BitGrid): boolean {
    if (this.rows !== other.rows || this.columns !== other.columns) return false;
    for (let i = 0; i < this.words.length; i++) if (this.words[i] !== other.words[i]) return false;
    return true;
  }
}
