import { needText } from "@drawcord/base";
import { YarnError } from "./error.js";

/** No quantity, yarn, reed or sley is written longer; what is longer is not worth the time to look at. */
const LONGEST = 200;

/**
 * Refuses a text that is too long to be a notation, before anything looks at it letter by letter.
 * @throws {YarnError} `too-long`
 */
export function checkShort(text: string): void {
  needText(text, "a notation");
  if (text.length <= LONGEST) return;
  throw new YarnError(
    "too-long",
    `"${text.slice(0, 20)}..." is ${text.length} characters long; expected at most ${LONGEST}`,
    { column: 1, length: text.length },
  );
}
