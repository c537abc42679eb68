/** A window of a cloth in the colours of its threads. */
import { squaresPath } from "@drawcord/draw";
import type { BitGrid } from "@drawcord/grid";
import { palette, type Shape } from "@drawcord/page";

/** The window at `x`, `y`, a square of so many millimetres a crossing, the first pick at the bottom. */
export function clothWindow(
  grid: BitGrid,
  x: number,
  y: number,
  size: number,
  [warp, weft]: readonly [string, string],
): Shape[] {
  const [width, height] = [grid.columns * size, grid.rows * size];
  return [
    { kind: "rect", x, y, width, height, fill: weft },
    { kind: "path", d: squaresPath(grid), fill: warp, frame: { x, y, sx: size, sy: size } },
    { kind: "rect", x, y, width, height, stroke: palette.rule, strokeWidth: 0.2 },
  ];
}
