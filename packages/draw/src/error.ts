import { DrawcordError } from "@drawcord/base";

/**
 * Why a cloth cannot be drawn.
 * - `bad-colour`: a colour is not `#rrggbb`
 * - `bad-scale`: a scale is not a number of pixels above 0
 * - `too-large`: what was given is larger than Drawcord works on; the message says how large it may be
 */
export type DrawErrorCode = "bad-colour" | "bad-scale" | "too-large";

/** A caller's mistake about a drawing: one sentence, with the facts as fields. */
export class DrawError extends DrawcordError<DrawErrorCode> {
  /** The name of the class. */
  override readonly name = "DrawError";
}
