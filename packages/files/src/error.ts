import { DrawcordError } from "@drawcord/base";
import type { Place } from "./place.js";

/** Why a file cannot be read or written. */
export type FileErrorCode =
  | "too-large"
  | "not-text"
  | "empty"
  | "not-yaml"
  | "too-deep"
  | "too-many-parts"
  | "two-documents"
  | "newer-version"
  | "unknown-key"
  | "missing-key"
  | "duplicate-key"
  | "wrong-type"
  | "bad-value"
  | "bad-notation"
  | "unknown-weave"
  | "unknown-shaft"
  | "unknown-block"
  | "unknown-yarn"
  | "raised-and-sunk"
  | "bad-chart"
  | "bad-draft"
  | "too-many-shafts"
  | "no-clear-ink";

/** Text that cannot be used: one sentence, with the place where it went wrong. Nothing of the file was kept or changed. */
export class FileError extends DrawcordError<FileErrorCode> {
  override readonly name = "FileError";
  /** The name the file was read by. */
  readonly file: string;
  /** Line, from 1. */
  readonly line: number;
  /** Column, from 1. */
  readonly column: number;
  /** What is wrong, without the place; `message` is `file:line:column: sentence`. */
  override readonly sentence: string;

  constructor(code: FileErrorCode, sentence: string, file: string, place: Place) {
    super(code, `${file}:${place.line}:${place.column}: ${sentence}`);
    this.sentence = sentence;
    this.file = file;
    this.line = place.line;
    this.column = place.column;
  }
}
