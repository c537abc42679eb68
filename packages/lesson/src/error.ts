import { DrawcordError } from "@drawcord/base";

/** Why a lesson cannot be made. */
export type LessonErrorCode = "no-crossing" | "bad-seed" | "bad-count" | "unknown-task" | "bad-paper";

/** A caller's mistake about a lesson: one sentence, with the facts as fields. */
export class LessonError extends DrawcordError<LessonErrorCode> {
  /** The name of the class. */
  override readonly name = "LessonError";
}
