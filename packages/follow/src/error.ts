import { DrawcordError } from "@drawcord/base";

/** Why a page for the loom cannot be made. */
export type FollowErrorCode = "too-long";

/** A caller's mistake about a page for the loom: one sentence, with the facts as fields. */
export class FollowError extends DrawcordError<FollowErrorCode> {
  /** The name of the class. */
  override readonly name = "FollowError";
}
