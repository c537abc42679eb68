import { DrawcordError } from "@drawcord/base";

/**
 * Why a number of yarn or cloth cannot be read or worked out.
 * - `no-number`: a quantity has no number in front
 * - `no-unit`: a quantity has no unit; write `12 per cm`, `3 m`, `45 g`
 * - `unknown-unit`: there is no such unit of measure
 * - `wrong-kind`: a quantity measures another thing than is asked for: a length where a weight is wanted
 * - `not-finite`: a value is no finite number
 * - `negative`: a value is below zero and cannot be
 * - `zero`: a value is zero and may not be
 * - `not-whole`: only whole numbers make sense here
 * - `absurd`: a value lies outside what can be: the message says from where to where it may lie
 * - `bad-notation`: a notation cannot be read: the message shows where it stops making sense
 * - `too-long`: what was given is longer than a page can hold; the message says how long it may be
 * - `unknown-system`: there is no such yarn count
 * - `unknown-fibre`: there is no such fibre; the message names the nearest
 * - `bad-formula`: a formula of your own cannot be read, or its units do not go together
 * - `missing`: a formula lacks a value; give it one with its unit
 */
export type YarnErrorCode =
  | "no-number"
  | "no-unit"
  | "unknown-unit"
  | "wrong-kind"
  | "not-finite"
  | "negative"
  | "zero"
  | "not-whole"
  | "absurd"
  | "bad-notation"
  | "too-long"
  | "unknown-system"
  | "unknown-fibre"
  | "bad-formula"
  | "missing";

/** A caller's mistake, or text that cannot be read: one sentence, with the facts as fields (`column` counts from 1). */
export class YarnError extends DrawcordError<YarnErrorCode> {
  /** The name of the class. */
  override readonly name = "YarnError";
}
