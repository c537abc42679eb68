import type { TextEdit } from "../../src/index.js";

/** A text with edits made, from the last to the first. */
export function applied(text: string, edits: readonly TextEdit[]): string {
  return edits.reduceRight(
    (now, { range, text: by }) => now.slice(0, range.offset) + by + now.slice(range.end.offset),
    text,
  );
}
