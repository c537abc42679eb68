import type { ErrorCode, YAMLError } from "yaml";
import { printable } from "../printable.js";

/** What is said of a type mark that is none of plain data. */
export const noMark = "a type mark with ! has no meaning in a recipe";

/** The faults of YAML that weavers meet, in their words. */
const sentences: Partial<Record<ErrorCode, string>> = {
  TAB_AS_INDENT: "a tab stands where the line is indented; indent with blanks",
  BAD_INDENT: "this line is not indented like the lines it belongs with",
  MULTILINE_IMPLICIT_KEY: "a key must end on its line with a colon and a blank",
  BLOCK_AS_IMPLICIT_KEY:
    "two keys stand on one line; put each on a line of its own, or the text between quotes",
  KEY_OVER_1024_CHARS: "a key here is longer than 1024 characters",
  MULTIPLE_ANCHORS: "a value here has two names with &",
  BAD_SCALAR_START: "a text cannot begin with this sign; put it between quotes",
  BAD_ALIAS: "an alias with * must name a value; put a text that begins with * between quotes",
  BAD_DIRECTIVE: "a line that begins with % has no meaning in a recipe",
  TAG_RESOLVE_FAILED: noMark,
  BAD_COLLECTION_TYPE: noMark,
};

/** Whether a text in quotes runs to its end without them. */
export function isUnclosedQuote({ code, message }: YAMLError): boolean {
  return code === "MISSING_CHAR" && /^Missing closing .quote/.test(message);
}

/** One sentence for a fault of the YAML text. */
export function sentenceOf(error: YAMLError): string {
  const unclosed = /must be sufficiently indented and end with an? (.)$/.exec(error.message);
  if (unclosed !== null) return `a bracket before this is not closed; expected ${unclosed[1]}`;
  if (isUnclosedQuote(error)) return "the quotes opened here are never closed";
  const own = sentences[error.code];
  if (own !== undefined) return own;
  const first = error.message.split("\n")[0] ?? "";
  return `this is not YAML: ${printable(first.charAt(0).toLowerCase() + first.slice(1), 120)}`;
}
