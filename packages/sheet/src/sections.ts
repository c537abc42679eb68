import { findRepeat } from "./repeat.js";

/** Rows that follow one another, woven so many times running before the next section begins. */
export interface RowSection {
  /** First and one past the last of the rows of one time, from 0. */
  readonly start: number;
  readonly end: number;
  readonly times: number;
}

/** A repeat that saves fewer rows than this is quicker woven row by row than looked up. */
const LEAST_SAVED = 10;

/**
 * A lift plan as a weaver follows it: what is woven once, and what is woven several times running, in order.
 * @param keys one a row; rows with equal keys are woven alike
 * @example sectionsOf([..."xabcdeabcdeabcdey"]).map(({ times }) => times) // [1, 3, 1]
 */
export function sectionsOf(keys: readonly string[]): RowSection[] {
  if (keys.length === 0) return [];
  const found = findRepeat(keys);
  if (found === undefined || (found.times - 1) * found.period < LEAST_SAVED) {
    return [{ start: 0, end: keys.length, times: 1 }];
  }
  const { start, period, times } = found;
  const after = start + period * times;
  return [
    ...sectionsOf(keys.slice(0, start)),
    { start, end: start + period, times },
    ...sectionsOf(keys.slice(after)).map((section) => ({
      ...section,
      start: section.start + after,
      end: section.end + after,
    })),
  ];
}
