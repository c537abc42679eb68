import { DrawcordError } from "@drawcord/base";

/** Why a sheet cannot be made. */
export type SheetErrorCode = "too-long" | "no-cloth";

/** A caller's mistake about a sheet: one sentence, with the facts as fields. */
export class SheetError extends DrawcordError<SheetErrorCode> {
  /** The name of the class. */
  override readonly name = "SheetError";
}
