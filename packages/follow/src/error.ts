import { DrawcordError } from "@drawcord/base";

/**
 * Why a page for the loom cannot be made.
 * - `too-long`: what was given is longer than a page can hold; the message says how long it may be
 */
export type FollowErrorCode = "too-long";

/** A caller's mistake about a page for the loom: one sentence, with the facts as fields. */
export class FollowError extends DrawcordError<FollowErrorCode> {
  /** The name of the class. */
  override readonly name = "FollowError";
}
