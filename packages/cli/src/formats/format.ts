import type { Severity } from "@drawcord/check";
import type { CheckedCloth, Failure } from "../checking/cloth.js";
import type { Tally } from "../checking/tally.js";

/** How a report is to look. Plain data, so that it can be handed to a worker. */
export interface Look {
  /** Characters in a line. */
  readonly width: number;
  readonly colour: boolean;
  /** Every finding, instead of the worst few of each rule. */
  readonly all: boolean;
  /** With `--quiet`, the least level of finding that is shown; then a cloth without any is not spoken of. */
  readonly least?: Severity;
}

/** How a run ended. */
interface End {
  readonly tally: Tally;
  /** The exit status. */
  readonly status: number;
  /** How many files were asked for, in all shards. */
  readonly files: number;
  readonly look: Look;
}

/**
 * One way of printing the reports of a run: a piece of text for each file, in the order of the files, and what stands
 * around the pieces. A piece depends on nothing but its cloth and the look, so that it can be made by a worker.
 */
export interface Format {
  /** What is said of one cloth; nothing where it is empty. */
  cloth(cloth: CheckedCloth, look: Look): string;
  /** What is said of a file that could not be used, besides the sentence on standard error. */
  failure?(failure: Failure): string;
  /** What stands before the first piece; `files` is how many were asked for, in all shards. */
  head?(files: number): string | Promise<string>;
  /** What stands between two pieces. */
  readonly between?: string;
  /** What stands after the last piece. */
  tail?(end: End): string;
}
