import { DrawcordError } from "@drawcord/base";

/**
 * Why the command line, or a file named on it, cannot be used.
 * - `unknown-command`: there is no such command; `drawcord --help` lists them
 * - `unknown-option`: the command has no such option
 * - `unknown-choice`: an option takes one of a few words, and another was given
 * - `unknown-piece`: the recipe has no piece of that name
 * - `bad-mask`: the picture of squares that must stay does not fit the chart
 * - `outside`: a place lies outside the grid or the cloth
 * - `no-length`: a piece has no length to be filled, or rows cannot be worked out from it
 * - `unknown-format`: there is no such format, or a file's ending says none
 * - `unknown-rule`: there is no rule of that name; `drawcord rules` lists them
 * - `missing-value`: an option was given without its value
 * - `unwanted-value`: an option that takes no value was given one
 * - `unwanted-option`: an option does not go with the others, or with this file
 * - `bad-number`: an option takes a whole number within bounds, and something else was given
 * - `bad-shard`: a part of a job is not written as `2/8`
 * - `missing-operand`: a command was given no file
 * - `unwanted-operand`: a command was given more files than it takes
 * - `nothing-matches`: no file has a name that the pattern describes
 * - `bad-change`: a change for `--with` cannot be read; write `key: value` with a key of the recipe, such as
 *   `cloth.sett: 14 per cm`
 * - `no-fit`: nothing that may be changed brings the recipe to what was asked for
 * - `no-plan`: there is nothing to plan in this file
 * - `no-sheet`: no sheet can be made of this file
 * - `no-rule`: there is no rule of that name
 * - `no-chart`: no chart can be made of this file
 * - `no-draft`: the file is no weaving draft; `--from` of `init` takes a WIF
 * - `no-picture`: a picture cannot be drawn: too large, or of a colour that there is none of
 * - `not-a-recipe`: the command takes a recipe, and the file is something else
 * - `bad-title`: a title is too long for the heading, or holds what no heading can
 * - `too-wide`: a chart is wider than is allowed
 * - `too-many-shafts`: a cloth takes more shafts than are allowed
 * - `unreadable`: a file is not there, or may not be read
 * - `too-large`: what was given is larger than Drawcord works on; the message says how large it may be
 * - `unwritable`: a file cannot be written there; nothing was written
 * - `unmendable`: only a recipe can be mended
 */
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
