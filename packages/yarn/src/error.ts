import { DrawcordError } from "@drawcord/base";

/** Why a number of yarn or cloth cannot be read or worked out. */
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
