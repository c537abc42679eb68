import { GridError } from "./error.js";

/** 2 GiB of words: more than any cloth, and about what one typed array may hold everywhere. */
const MOST_WORDS = 2 ** 29;

/** Rows and columns are counted in 31 bits, so that shifts and masks never meet a sign. */
const LONGEST_SIDE = 2 ** 31 - 1;

/** Words in a row of that many columns. */
export function strideOf(columns: number): number {
  return Math.ceil(columns / 32);
}

/**
 * Whole, not negative, and small enough to hold in memory.
 * @throws {GridError} `bad-size`
 */
export function checkSize(rows: number, columns: number): void {
  for (const [side, value] of [
    ["rows", rows],
    ["columns", columns],
  ] as const) {
    if (!Number.isInteger(value) || value < 0) {
      throw new GridError("bad-size", `a grid needs a whole number of ${side}, 0 or more; found ${value}`, {
        [side]: value,
      });
    }
  }
  if (rows * strideOf(columns) > MOST_WORDS || Math.max(rows, columns) > LONGEST_SIDE) {
    throw new GridError(
      "bad-size",
      `a grid of ${rows} rows and ${columns} columns does not fit in memory; the most is ${MOST_WORDS} words of 32 bits`,
      { rows, columns, most: MOST_WORDS },
    );
  }
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
