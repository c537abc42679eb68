/**
 * Layout. A row of `columns` bits fills `stride = ceil(columns / 32)` words; bit `j` of a row is bit `j & 31` of word
 * `j >>> 5`, lowest first. Bits past the last column are always 0, so that rows compare and count as whole words.
 */
import { GridError } from "./error.js";
import { checkSize, strideOf } from "./size.js";

/** The words of a grid, to look at and not to touch. */
export interface ReadonlyWords extends Iterable<number> {
  /** How many words. */
  readonly length: number;
  readonly [index: number]: number;
}

/**
 * A matrix of bits: rows are picks (row 0 woven first), columns are ends, a bit is 1 where the end is raised.
 * It never changes; every change is a new grid.
 */
export class BitGrid {
  /** How many rows there are: picks. */
  readonly rows: number;
  /** How many columns there are: ends. */
  readonly columns: number;
  /** Words in a row: `ceil(columns / 32)`. */
  readonly stride: number;
  /** `rows * stride` unsigned 32-bit words, row after row; bits past the last column are 0. */
  readonly words: ReadonlyWords;

  private constructor(rows: number, columns: number, words: Uint32Array) {
    this.rows = rows;
    this.columns = columns;
    this.stride = strideOf(columns);
    this.words = words;
  }

  /**
   * A grid that takes `words` for its own: they are not copied and must not be changed afterwards. They come row after
   * row, `ceil(columns / 32)` words a row, lowest bit first; bits past the last column are dropped.
   * @param rows number of picks
   * @param columns number of ends
   * @param words `rows * ceil(columns / 32)` words, row after row, lowest bit first
   * @throws {GridError} `bad-size` when a side is negative, a fraction or too large; `wrong-length` when the number of
   * words is not `rows * ceil(columns / 32)`
   * @example toText(BitGrid.own(1, 3, Uint32Array.of(0b101))) // "#.#"
   */
  static own(rows: number, columns: number, words: Uint32Array): BitGrid {
    checkSize(rows, columns);
    const stride = strideOf(columns);
    if (words.length !== rows * stride) {
      throw new GridError(
        "wrong-length",
        `${rows} rows of ${columns} columns take ${rows * stride} words; ${words.length} were given`,
        { rows, columns, expected: rows * stride, found: words.length },
      );
    }
    const spare = columns & 31;
    if (spare !== 0) {
      const mask = 2 ** spare - 1;
      for (let last = stride - 1; last < words.length; last += stride) words[last]! &= mask;
    }
    return new BitGrid(rows, columns, words);
  }

  /**
   * A grid from a copy of its words, laid out as for `own`.
   * @param rows number of picks
   * @param columns number of ends
   * @param words `rows * ceil(columns / 32)` words, row after row, lowest bit first
   * @throws {GridError} `bad-size`, `wrong-length` as `own`
   * @example toText(BitGrid.fromWords(1, 3, [0b101])) // "#.#"
   */
  static fromWords(rows: number, columns: number, words: ArrayLike<number>): BitGrid {
    return BitGrid.own(rows, columns, Uint32Array.from(words));
  }

  /**
   * Whether the end of `column` is raised on the pick of `row`, both from 0.
   * @param row the pick, from 0
   * @param column the end, from 0
   * @throws {GridError} `outside` when there is no such row or column
   * @example fromText("#.").get(0, 0) // true
   */
  get(row: number, column: number): boolean {
    if (!(isIndex(row, this.rows) && isIndex(column, this.columns))) {
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
   * @param other the grid to compare with
   * @example fromText("#.").equals(fromText("#.")) // true
   */
  equals(other: BitGrid): boolean {
    if (this.rows !== other.rows || this.columns !== other.columns) return false;
    for (let i = 0; i < this.words.length; i++) if (this.words[i] !== other.words[i]) return false;
    return true;
  }
}

function isIndex(value: number, length: number): boolean {
  return Number.isInteger(value) && value >= 0 && value < length;
}
