import { DrawcordError } from "@drawcord/base";

/** Why a grid cannot be made or read. */
export type GridErrorCode =
  | "bad-size"
  | "not-a-grid"
  | "outside"
  | "wrong-length"
  | "uneven-rows"
  | "bad-character"
  | "unlike-size";

/** A caller's mistake about a grid: one sentence, with the facts as fields. */
export class GridError extends DrawcordError<GridErrorCode> {
  /** The name of the class. */
  override readonly name = "GridError";
}
