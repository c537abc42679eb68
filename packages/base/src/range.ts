/** One character of a text. */
export interface TextPoint {
  /** Line, from 1. */
  readonly line: number;
  /** Column, from 1, in UTF-16 units as an editor counts them. */
  readonly column: number;
  /** Place in the whole text, from 0, in UTF-16 units. */
  readonly offset: number;
}

/** A stretch of a text: where it begins, and the point right behind it. */
export interface Range extends TextPoint {
  /** The name that the text was read by; empty where it has none. */
  readonly file: string;
  /** The point behind the last character; an empty stretch ends where it begins. */
  readonly end: TextPoint;
}
