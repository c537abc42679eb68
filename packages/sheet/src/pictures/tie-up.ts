import { type Frame, palette, round, type Shape } from "@drawcord/page";
import type { Treadle } from "../woven.js";

/**
 * A tie-up: treadles across, ground shafts upwards from shaft 1. A triangle up is a shaft raised, a triangle down one
 * sunk; an empty square leaves the shaft where the pattern harness puts it.
 */
export function tieMarks(treadles: readonly Treadle[], shafts: number, frame: Frame): Shape[] {
  return treadles.flatMap(({ raise, sink }, treadle) => [
    ...raise.map((shaft) => triangle(treadle, shaft, 1)),
    ...sink.map((shaft) => triangle(treadle, shaft, -1)),
  ]);

  function triangle(treadle: number, shaft: number, up: 1 | -1): Shape {
    const { x, y, sx, sy } = frame;
    const left = x + (treadle + 0.18) * sx;
    const middle = y + (shafts - shaft + 0.5) * sy;
    const base = middle + up * 0.28 * sy;
    const wide = 0.64 * sx;
    const tall = -up * 0.56 * sy;
    return {
      kind: "path",
      d: `M${round(left)} ${round(base)}h${round(wide)}l${round(-wide / 2)} ${round(tall)}z`,
      ...(up === 1 ? { fill: palette.ink } : { fill: palette.paper, stroke: palette.ink, width: 0.08 * sx }),
    };
  }
}
