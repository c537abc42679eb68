import { table, wrapText } from "../text.js";

/** Lines set in by two blanks. */
export function indent(lines: readonly string[]): string[] {
  return lines.map((line) => `  ${line}`);
}

/** Names and what is said of them, in two columns. */
export function rowsOf(rows: readonly (readonly [string, string])[], width: number): string[] {
  return table(rows, width).split("\n");
}

/** Sentences, each begun on a line of its own. */
export function sentences(all: readonly string[], width: number): string[] {
  return all.flatMap((sentence) => indent(wrapText(sentence, Math.min(width, 80) - 2)));
}
