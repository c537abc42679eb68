import type { BitGrid, Rectangle } from "@drawcord/grid";
import { type Colour, type Rgb, rgbOf } from "./colour/rgb.js";
import { DrawError } from "./error.js";

/** How a cloth is drawn. */
export interface DrawOptions {
  /** The colour of the ends, `#rrggbb`: one for all, or an order that is repeated from end 1 on; default `#000000`. */
  readonly warp?: Colour | readonly Colour[];
  /** The colour of the picks, `#rrggbb`: one for all, or an order that is repeated from pick 1 on; default `#ffffff`. */
  readonly weft?: Colour | readonly Colour[];
  /** Pixels that one thread is wide and high, more than 0; default 1. Below 1 threads share a pixel and mix their light. */
  readonly scale?: number;
  /** The part that is drawn, as rows (picks) and columns (ends) from 0; default: all of it. */
  readonly view?: Rectangle;
}

/** The colours of threads, as many as are in their order. */
export interface ThreadOrders {
  readonly warp: readonly Rgb[];
  readonly weft: readonly Rgb[];
}

/**
 * The orders of colours with their defaults.
 * @throws {DrawError} `bad-colour` for a colour that is not `#rrggbb`, and for an order without one
 */
export function ordersOf({ warp = "#000000", weft = "#ffffff" }: DrawOptions): ThreadOrders {
  return { warp: orderOf(warp, "warp"), weft: orderOf(weft, "weft") };
}

function orderOf(given: Colour | readonly Colour[], system: string): readonly Rgb[] {
  const order = typeof given === "string" ? [given] : given;
  if (order.length > 0) return order.map(rgbOf);
  throw new DrawError("bad-colour", `the order of the ${system}'s colours is empty; expected one or more`);
}

/**
 * The scale with its default.
 * @throws {DrawError} `bad-scale` for a scale that is no number above 0
 */
export function scaleOf({ scale = 1 }: DrawOptions): number {
  if (Number.isFinite(scale) && scale > 0) return scale;
  throw new DrawError("bad-scale", `the scale is ${scale}; expected pixels a thread, more than 0`, { scale });
}

/** The part of a grid that is drawn: all of it by default. */
export function viewOf({ view }: DrawOptions, { rows, columns }: BitGrid): Rectangle {
  return view ?? { row: 0, column: 0, rows, columns };
}
