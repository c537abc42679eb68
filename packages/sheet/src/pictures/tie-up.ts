import { type CellFrame, type Picture, palette, round, type Shape } from "@drawcord/page";
import { ruling } from "../drawing/ruling.js";
import { spacedCount } from "../parts/number.js";
import type { Treadle } from "../woven.js";
import { label } from "./label.js";

/**
 * The tie-up as it hangs under the loom: treadles across from left to right, ground shafts upwards from shaft 1.
 * @param hanging the treadles from left to right, from 1
 * @param blank what a square without a mark says
 */
export function tieUpPicture(
  { shafts, treadles }: { readonly shafts: number; readonly treadles: readonly Treadle[] },
  hanging: readonly number[],
  blank = "blank: left to the pattern harness",
): Picture {
  const cell = Math.min(7, 150 / treadles.length, 90 / shafts);
  const frame: CellFrame = { x: 7, y: 1, sx: cell, sy: cell };
  const foot = 1 + shafts * cell;
  const size = Math.min(2.8, cell);
  const paper: Shape[] = [
    ...ruling({ columns: treadles.length, rows: shafts, frame, every: 1 }),
    ...Array.from({ length: shafts }, (_, i) =>
      label(6, 1 + (shafts - i - 0.5) * cell + 0.9, `${i + 1}`, { anchor: "end", fill: palette.ink, size }),
    ),
    ...hanging.map((treadle, i) =>
      label(7 + (i + 0.5) * cell, foot + 3.2, `${treadle}`, { anchor: "middle", fill: palette.ink, size }),
    ),
    ...tieMarks([{ raise: [1], sink: [] }], 1, { x: 7, y: foot + 4.8, sx: 3, sy: 3 }),
    label(10.6, foot + 7.2, "raised"),
    ...tieMarks([{ raise: [], sink: [1] }], 1, { x: 20, y: foot + 4.8, sx: 3, sy: 3 }),
    label(23.6, foot + 7.2, "sunk"),
    label(31, foot + 7.2, blank),
  ];
  const hung = hanging.map((treadle) => treadles[treadle - 1]!);
  return {
    id: "tie-up-picture",
    caption: "Tie-up as it hangs: treadles from left to right, ground shafts upwards from the weaver",
    alt: `Tie-up of ${spacedCount(treadles.length, "treadle")} and ${spacedCount(shafts, "ground shaft")}. The table of treadles says the same in numbers.`,
    drawing: {
      width: Math.max(7 + treadles.length * cell + 2, 70),
      height: foot + 8.4,
      shapes: [...paper, ...tieMarks(hung, shafts, frame)],
    },
  };
}

/**
 * A tie-up's marks. A triangle up is a shaft raised, a triangle down one sunk; an empty square leaves the shaft where the
 * pattern harness puts it.
 */
export function tieMarks(treadles: readonly Treadle[], shafts: number, frame: CellFrame): Shape[] {
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
