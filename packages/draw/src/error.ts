import { DrawcordError } from "@drawcord/base";

/** Why a cloth cannot be drawn. */
export type DrawErrorCode = "bad-colour" | "bad-scale" | "too-large";

/** A caller's mistake about a drawing: one sentence, with the facts as fields. */
export class DrawError extends DrawcordError<DrawErrorCode> {
  /** The name of the class. */
  override readonly name = "DrawError";
}
