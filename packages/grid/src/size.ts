import { GridError } from "./error.js";

/** 2 GiB of words: more than any cloth, and about what one typed array may hold everywhere. */
const MOST_WORDS = 2 ** 29;

/** Rows and columns are counted in 31 bits, so that shifts and masks never meet a sign. */
const LONGEST_SIDE = 2 ** 31;

/** Words in a row of that many columns. */
export function strideOf(columns: number): number {
  return Math.ceil(columns / 32);
}

/**
 * Whole, not negative, and small enough to hold in memory.
 * @throws {GridError} `bad-size`
 */
export function checkSize(rows: number, columns: number): void {
  const isSide = (side: number) => Number.isInteger(side) && side >= 0 && side < LONGEST_SIDE;
  if (isSide(rows) && isSide(columns) && rows * strideOf(columns) <= MOST_WORDS) return;
  throw new GridError(
    "bad-size",
    `a grid of ${rows} rows and ${columns} columns cannot be; expected whole numbers from 0, ${MOST_WORDS} words in all at the most`,
    { rows, columns, most: MOST_WORDS },
  );
}

/**
 * The empty words of a grid of that size.
 * @throws {GridError} `bad-size` also when this machine cannot find the memory
 */
export function emptyWords(rows: number, columns: number): Uint32Array {
  checkSize(rows, columns);
  const words = rows * strideOf(columns);
  try {
    return new Uint32Array(words);
  } catch {
    throw new GridError(
      "bad-size",
      `there is no memory left for a grid of ${rows} rows and ${columns} columns`,
      {
        rows,
        columns,
      },
    );
  }
}
