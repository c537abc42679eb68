import { DrawcordError } from "@drawcord/base";

/**
 * Why a grid cannot be made or read.
 * - `bad-size`: a size is not a whole number within its bounds
 * - `not-a-grid`: what was given is no grid of bits
 * - `outside`: a place lies outside the grid or the cloth
 * - `wrong-length`: a list is not as long as what it goes with
 * - `uneven-rows`: the rows of a picture are of unlike length
 * - `bad-character`: a text has a letter that its notation has no meaning for; the message shows it and what may
 *   stand there
 * - `unlike-size`: two grids that go together are of unlike size
 */
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
