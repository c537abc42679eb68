import { DrawcordError } from "@drawcord/base";

/**
 * Why a sheet cannot be made.
 * - `too-long`: what was given is longer than a page can hold; the message says how long it may be
 * - `no-cloth`: there is no cloth to draw on a sheet
 */
export type SheetErrorCode = "too-long" | "no-cloth";

/** A caller's mistake about a sheet: one sentence, with the facts as fields. */
export class SheetError extends DrawcordError<SheetErrorCode> {
  /** The name of the class. */
  override readonly name = "SheetError";
}
