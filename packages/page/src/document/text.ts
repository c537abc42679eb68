import type { Text, Words } from "./types.js";

/** A text as stretches. */
export function wordsOf(text: Text): readonly Words[] {
  return typeof text === "string" ? (text === "" ? [] : [{ text }]) : text;
}

/**
 * A text without its dress.
 * @param text a text, or stretches of one
 * @example plainText([{ text: "12", strong: true }, { text: " ends" }]) // "12 ends"
 */
export function plainText(text: Text): string {
  return wordsOf(text)
    .map((words) => words.text)
    .join("");
}

/** How many boxes to tick a cell of a `tick` column asks for. */
export function boxesOf(cell: Text): number {
  return Math.max(1, Number(plainText(cell)));
}
