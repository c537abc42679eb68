import type { Facts } from "./error.js";
import type { Range } from "./range.js";

/**
 * The place that the facts of a notation tell: of the sign that was found, or of nothing. Offsets count in its line.
 * @param facts `column` and perhaps `line`, from 1, and what was `found` there
 * @returns the place, of a text without a name; undefined where there is no column
 * @example notationPlace({ column: 3, found: "q" })?.end // { line: 1, column: 4, offset: 3 }
 */
export function notationPlace({ column, found = "", line = 1 }: Facts): Range | undefined {
  if (typeof column !== "number" || typeof line !== "number") return undefined;
  const length = String(found).length;
  const offset = column - 1;
  const end = { line, column: column + length, offset: offset + length };
  return { file: "", line, column, offset, end };
}
