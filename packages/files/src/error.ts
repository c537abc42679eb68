import { DrawcordError, type Range } from "@drawcord/base";
import type { TextStretch } from "./place.js";

/** Why a file cannot be read or written. */
export type FileErrorCode =
  | "too-large"
  | "not-text"
  | "empty"
  | "not-yaml"
  | "too-deep"
  | "too-many-parts"
  | "too-many-problems"
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

/** One thing that is wrong with a text, as plain data: what, and from where to where. */
export interface Problem extends Range {
  readonly code: FileErrorCode;
  /** What is wrong, without the place. */
  readonly sentence: string;
}

/** Text that cannot be used: one sentence, with the place where it went wrong. Nothing of the file was kept or changed. */
export class FileError extends DrawcordError<FileErrorCode> {
  /** The name of the class. */
  override readonly name = "FileError";
  /** From where to where in the text, and the name it was read by. */
  override readonly place: Range;
  /** All that is wrong with the text, in its order, this among it. */
  readonly problems: readonly Problem[];

  /**
   * @param code why, as one of the codes
   * @param sentence what is wrong, without the place; `message` is `file:line:column: sentence`
   * @param file the name the text was read by
   * @param place from where to where in the text
   * @param problems all that is wrong with the text, where there is more
   */
  constructor(
    code: FileErrorCode,
    sentence: string,
    file: string,
    place: TextStretch,
    problems?: readonly Problem[],
  ) {
    const { column, end, line, offset } = place;
    const range = { file, line, column, offset, end };
    super(code, sentence, {}, range);
    this.place = range;
    this.problems = problems ?? [{ ...range, code, sentence }];
  }
}
