import { YarnError } from "../error.js";
import { checkShort } from "../short.js";

/** Ends in the dents, over and over: `[1, 2, 2]` puts 5 ends in 3 dents. */
export type Sley = readonly number[];

/** More ends than ever go in one dent. */
const MOST_IN_A_DENT = 50;

/**
 * Reads a sleying pattern: ends in each dent, `2`, `1-2-2`, `0-1` (every other dent empty).
 * @param text the notation
 * @throws {YarnError} `bad-notation` when it is not whole numbers with strokes between; `zero` when every dent is empty;
 * `too-long`; `absurd` above 50 in a dent
 * @example parseSley("1-2-2") // [1, 2, 2]
 */
export function parseSley(text: string): Sley {
  checkShort(text);
  const parts = text.trim().split(/ *[-–] */);
  const wrong = parts.find((part) => !/^\d{1,9}$/.test(part));
  if (wrong !== undefined) {
    throw new YarnError(
      "bad-notation",
      `"${text}" is not a sleying pattern; expected ends in each dent, such as 2 or 1-2-2`,
      {
        text,
        found: wrong,
      },
    );
  }
  const sley = parts.map(Number);
  if (sley.every((ends) => ends === 0))
    throw new YarnError("zero", `"${text}" leaves every dent empty`, { text });
  const most = Math.max(...sley);
  if (most > MOST_IN_A_DENT) {
    throw new YarnError(
      "absurd",
      `"${text}" puts ${most} ends in a dent; expected at most ${MOST_IN_A_DENT}`,
      { text, most },
    );
  }
  return sley;
}

/**
 * A sleying pattern as text.
 * @param sley ends in each dent, in turn
 * @example printSley([1, 2, 2]) // "1-2-2"
 */
export function printSley(sley: Sley): string {
  return sley.join("-");
}
