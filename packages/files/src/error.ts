import { DrawcordError, type ErrorData, type Range } from "@drawcord/base";
import type { TextStretch } from "./place.js";

/**
 * Why a file cannot be read or written.
 * - `too-large`: what was given is larger than Drawcord works on; the message says how large it may be
 * - `not-text`: a file that must be text holds bytes that are no letters
 * - `empty`: a file has nothing in it
 * - `not-yaml`: the text breaks the rules of YAML, usually by a wrong indent or a missing quote
 * - `too-deep`: sections stand within sections more deeply than any recipe needs
 * - `too-many-parts`: a file has more parts than any cloth needs
 * - `too-many-problems`: so much is wrong that the rest is not told
 * - `two-documents`: a file holds two recipes; put each into a file of its own
 * - `newer-version`: a file is of a newer version of its format than this Drawcord reads
 * - `unknown-key`: a key is none of its section's; the message names the nearest
 * - `missing-key`: a section lacks a key that it cannot do without
 * - `duplicate-key`: a key stands twice in one section; keep one of them
 * - `wrong-type`: a value is of another kind than its key takes: a list where a number is wanted
 * - `bad-value`: a value of a recipe is not one that its key takes
 * - `bad-notation`: a notation cannot be read: the message shows where it stops making sense
 * - `unknown-weave`: there is no such weave; the weaves lists those there are
 * - `unknown-shaft`: a shaft is named that there is none of
 * - `unknown-block`: an order names a block that there is none of
 * - `unknown-yarn`: a yarn is named that the section yarns does not have
 * - `raised-and-sunk`: a step raises and sinks one shaft at once
 * - `bad-chart`: a chart cannot be read: rows of unlike length, or letters other than `#` and `.`
 * - `bad-draft`: a shaft draft (WIF) contradicts itself, or lacks what is needed to work out its cloth
 * - `too-many-shafts`: a cloth takes more shafts than are allowed
 * - `no-clear-ink`: a picture has no two inks that can be told apart
 */
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
  /** Why, as one of the codes. */
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

  /** The error as plain data with all its problems, which `errorFrom` turns back. */
  override toJSON(): ErrorData {
    return { ...super.toJSON(), problems: this.problems };
  }
}
