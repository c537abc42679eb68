import { DrawcordError } from "@drawcord/base";

/**
 * Why a threading, a lift plan or a draft cannot be read or made.
 * - `bad-character`: a text has a letter that its notation has no meaning for; the message shows it and what may
 *   stand there
 * - `bad-repeat`: a number of repeats, or how a cloth repeats, makes no sense
 * - `bad-run`: a run of shafts such as `1-8` has no end that can be
 * - `bad-shaft`: a shaft is not a whole number of 1 or more
 * - `bad-size`: a size is not a whole number within its bounds
 * - `empty-group`: a pair of brackets in a threading has nothing in it
 * - `no-length`: a piece has no length to be filled, or rows cannot be worked out from it
 * - `no-rows`: a lift plan has no rows
 * - `no-units`: a draft has no units
 * - `outside-harness`: a shaft is named that the harness does not have
 * - `raised-and-sunk`: a step raises and sinks one shaft at once
 * - `repeated-shaft`: a shaft is named twice in one set
 * - `shared-shaft`: blocks that are woven together draw one shaft; give each its own
 * - `too-large`: what was given is larger than Drawcord works on; the message says how large it may be
 * - `unbalanced-bracket`: a bracket in a threading has no other half
 * - `unknown-block`: an order names a block that there is none of
 * - `unknown-word`: a word in a notation means nothing there
 * - `unlike-lengths`: two lists that go together are of unlike length
 * - `unnamed-shafts`: shafts are drawn that no block says it has
 * - `wrong-argument`: a function was given an argument of the wrong kind; the message says what it takes and what was
 *   given
 * - `wrong-length`: a list is not as long as what it goes with
 */
export type UnitsErrorCode =
  | "bad-character"
  | "bad-repeat"
  | "bad-run"
  | "bad-shaft"
  | "bad-size"
  | "empty-group"
  | "no-length"
  | "no-rows"
  | "no-units"
  | "outside-harness"
  | "raised-and-sunk"
  | "repeated-shaft"
  | "shared-shaft"
  | "too-large"
  | "unbalanced-bracket"
  | "unknown-block"
  | "unknown-word"
  | "unlike-lengths"
  | "unnamed-shafts"
  | "wrong-argument"
  | "wrong-length";

/** A caller's mistake about units, threading or lifts: one sentence, with the facts as fields. */
export class UnitsError extends DrawcordError<UnitsErrorCode> {
  /** The name of the class. */
  override readonly name = "UnitsError";

  /** The sentence without its place in the text. */
  get reason(): string {
    return this.sentence;
  }
}
