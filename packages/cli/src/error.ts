import { DrawcordError } from "@drawcord/base";

/** Why the command line, or a file named on it, cannot be used. */
export type CliErrorCode =
  | "unknown-command"
  | "unknown-option"
  | "unknown-choice"
  | "unknown-piece"
  | "bad-mask"
  | "outside"
  | "no-length"
  | "unknown-format"
  | "unknown-rule"
  | "missing-value"
  | "unwanted-value"
  | "unwanted-option"
  | "bad-number"
  | "bad-shard"
  | "missing-operand"
  | "unwanted-operand"
  | "nothing-matches"
  | "bad-change"
  | "no-fit"
  | "no-plan"
  | "no-sheet"
  | "no-rule"
  | "no-chart"
  | "no-draft"
  | "no-picture"
  | "not-a-recipe"
  | "bad-title"
  | "too-wide"
  | "too-many-shafts"
  | "unreadable"
  | "too-large"
  | "unwritable"
  | "unmendable";

/** A command line, or a file named on it, that cannot be used: one sentence, with the facts as fields. Exit status 2. */
export class CliError extends DrawcordError<CliErrorCode> {
  /** The name of the class. */
  override readonly name = "CliError";
}
