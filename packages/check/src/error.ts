import { DrawcordError } from "@drawcord/base";

/** Why a cloth cannot be checked as asked. */
export type CheckErrorCode =
  | "bad-sett"
  | "bad-limit"
  | "bad-level"
  | "bad-repeat"
  | "unknown-rule"
  | "unlike-size";

/** A caller's mistake about a check: one sentence, with the facts as fields. */
export class CheckError extends DrawcordError<CheckErrorCode> {
  /** The name of the class. */
  override readonly name = "CheckError";
}
