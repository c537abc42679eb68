import { DrawcordError } from "@drawcord/base";

/** Why a ground cannot be. */
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
