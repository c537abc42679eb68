import { DrawcordError } from "@drawcord/base";

/**
 * Why a cloth cannot be checked as asked.
 * - `bad-sett`: a sett is not a number of threads above 0
 * - `bad-limit`: a limit is not a number that makes sense for it
 * - `bad-level`: a level is none of `error`, `warning`, `note` and `off`
 * - `bad-repeat`: a number of repeats, or how a cloth repeats, makes no sense
 * - `unknown-rule`: there is no rule of that name; `drawcord rules` lists them
 * - `unlike-size`: two grids that go together are of unlike size
 */
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
