/** How the cloth lies on the canvas: where it begins, and how large a crossing is. */
export interface Lay {
  /** Pixels from the left and the top of the canvas to the cloth's own. */
  readonly left: number;
  readonly top: number;
  /** Pixels of one end across and one pick high. */
  readonly wide: number;
  readonly high: number;
}

/** What of a cloth says how it lies. */
interface Sized {
  readonly ends: number;
  readonly picks: number;
  readonly pitch: readonly [end: number, pick: number];
}

/**
 * Lays a cloth on a canvas, the last pick on top.
 * @param cloth its threads, and how wide and high one is
 * @param room the canvas in pixels
 * @param zoom pixels of one pick; 0 where all of the cloth is to be seen
 * @param centre what lies in the middle, as shares of the width from the left and of the height from the bottom
 */
export function layOf(
  { ends, picks, pitch }: Sized,
  room: { readonly wide: number; readonly high: number },
  zoom: number,
  centre: { readonly across: number; readonly up: number },
): Lay {
  const slant = pitch[0] / pitch[1];
  const high = zoom > 0 ? zoom : Math.min(room.wide / (ends * slant), room.high / picks);
  const wide = high * slant;
  const { across, up } = zoom > 0 ? centre : { across: 0.5, up: 0.5 };
  return {
    wide,
    high,
    left: room.wide / 2 - across * wide * ends,
    top: room.high / 2 - (1 - up) * high * picks,
  };
}

/**
 * The crossing under a point of the canvas, from 1 as it is seen from the left; undefined beside the cloth.
 * @param cloth its threads
 * @param lay how it lies
 * @param x pixels from the left of the canvas
 * @param y pixels from its top
 */
export function crossingAt(
  { ends, picks }: Sized,
  { high, left, top, wide }: Lay,
  x: number,
  y: number,
): { readonly end: number; readonly pick: number } | undefined {
  const end = Math.floor((x - left) / wide) + 1;
  const pick = picks - Math.floor((y - top) / high);
  return end >= 1 && pick >= 1 && end <= ends && pick <= picks ? { end, pick } : undefined;
}
