import type { LineEdit } from "./line.js";

/** An edit, and how much of the line is alike about it. */
export interface Suggestion {
  readonly edit: LineEdit;
  readonly likeness: number;
}

/** Takes a suggestion down: the edit, how much counts that is alike about it, and the places that it compares. */
export type Keep = (edit: LineEdit, likeness: number, ...places: readonly number[]) => void;
