import { DrawcordError } from "@drawcord/base";

/**
 * Why a lesson cannot be made.
 * - `no-crossing`: the cloth has no such end or pick
 * - `bad-seed`: a seed of exercises is not a whole number
 * - `bad-count`: a number of sheets or tasks is not a whole number within its bounds
 * - `unknown-task`: there is no such task; the message lists them
 * - `bad-paper`: a size of paper is none of those that are known
 */
export type LessonErrorCode = "no-crossing" | "bad-seed" | "bad-count" | "unknown-task" | "bad-paper";

/** A caller's mistake about a lesson: one sentence, with the facts as fields. */
export class LessonError extends DrawcordError<LessonErrorCode> {
  /** The name of the class. */
  override readonly name = "LessonError";
}
