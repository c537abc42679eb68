import { DrawcordError } from "@drawcord/base";

/** Why a chart cannot be turned into threading and lifts. */
export type ChartErrorCode = "bad-size" | "empty-chart" | "fixed-squares" | "wrong-length";

/** A caller's mistake about a chart or what it is to be woven with: one sentence, with the facts as fields. */
export class ChartError extends DrawcordError<ChartErrorCode> {
  /** The name of the class. */
  override readonly name = "ChartError";
}
