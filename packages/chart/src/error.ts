import { DrawcordError } from "@drawcord/base";

/**
 * Why a chart cannot be turned into threading and lifts.
 * - `bad-size`: a size is not a whole number within its bounds
 * - `empty-chart`: a chart has no squares
 * - `fixed-squares`: the squares that must stay as they are cannot be woven with so few shafts
 * - `wrong-length`: a list is not as long as what it goes with
 */
export type ChartErrorCode = "bad-size" | "empty-chart" | "fixed-squares" | "wrong-length";

/** A caller's mistake about a chart or what it is to be woven with: one sentence, with the facts as fields. */
export class ChartError extends DrawcordError<ChartErrorCode> {
  /** The name of the class. */
  override readonly name = "ChartError";
}
