import { DrawcordError } from "@drawcord/base";

/**
 * Why a ground cannot be.
 * - `bad-description`: the words for a weave are in an order that means nothing; see the weaves for those that do
 * - `bad-ends`: a weave cannot be counted on that number of ends
 * - `bad-order`: an order of shafts does not name each shaft as the weave wants
 * - `bad-ratio`: a twill's numbers over and under are not whole numbers of 1 or more
 * - `bad-size`: a size is not a whole number within its bounds
 * - `bad-step`: a satin's step must share no factor with its ends and be neither 1 nor one less than they are
 * - `too-large`: what was given is larger than Drawcord works on; the message says how large it may be
 * - `unbound`: a thread of the weave would never be bound
 * - `unknown-weave`: there is no such weave; the weaves lists those there are
 */
export type GroundErrorCode =
  | "bad-description"
  | "bad-ends"
  | "bad-order"
  | "bad-ratio"
  | "bad-size"
  | "bad-step"
  | "too-large"
  | "unbound"
  | "unknown-weave";

/** A caller's mistake about a ground weave: one sentence, with the facts as fields. */
export class GroundError extends DrawcordError<GroundErrorCode> {
  /** The name of the class. */
  override readonly name = "GroundError";
}
