import { BitGrid } from "./bit-grid.js";
import { GridError } from "./error.js";

/** A grid as plain data, which goes through `structuredClone` and so over the border of a worker. */
export interface GridData {
  /** How many rows. */
  readonly rows: number;
  /** How many columns. */
  readonly columns: number;
  /** `rows * ceil(columns / 32)` words, laid out as the grid's own. */
  readonly words: ArrayLike<number>;
}

/**
 * A grid as plain data. The words are the grid's own and are not copied: clone them, but do not change or transfer them.
 * @param grid the grid
 * @example toData(fromText("#.#")).words // [5]
 */
export function toData({ rows, columns, words }: BitGrid): GridData {
  return { rows, columns, words };
}

/**
 * The grid of plain data: what `toData` gave, or a grid that lost its methods on the way through `structuredClone`, as
 * those in an expansion do. Words in a `Uint32Array` are taken over and not copied, so this costs nothing.
 * @param data rows, columns and words
 * @throws {GridError} `not-a-grid` for anything without words; `bad-size`, `wrong-length` as `BitGrid.own`
 * @example toText(fromData(structuredClone(fromText("#.#")))) // "#.#"
 */
export function fromData(data: GridData): BitGrid {
  const { rows, columns, words } = data ?? {};
  if (typeof words?.length !== "number") {
    throw new GridError("not-a-grid", "rows, columns and words were expected; there are no words");
  }
  return words instanceof Uint32Array
    ? BitGrid.own(rows, columns, words)
    : BitGrid.fromWords(rows, columns, words);
}
