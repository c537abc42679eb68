import { type BitGrid, fromCells } from "@drawcord/grid";
import { type Frame, round, type Shape } from "@drawcord/page";
import { hexOf, type Rgb } from "../colour.js";
import { squaresPath } from "../drawing/squares.js";

/** The colours of a cloth's threads. */
export interface ThreadColours {
  readonly warp: Rgb;
  /** The weft of each pick. */
  readonly weft: readonly Rgb[];
}

/**
 * Cloth thread by thread: the weft lies below as bands of colour, the ends that lie on top over it as one path.
 * @param grid picks x ends as they are seen, 1 where the end lies on top
 * @param frame the cell of one interlacement
 */
export function threads(grid: BitGrid, colours: ThreadColours, frame: Frame): Shape[] {
  return [
    ...bands(grid, colours.weft, frame),
    { kind: "path", d: squaresPath(grid), fill: hexOf(colours.warp), frame, role: "raised" },
  ];
}

/** The first weft's colour all over, and every other weft's on its own picks. */
function bands(grid: BitGrid, weft: readonly Rgb[], frame: Frame): Shape[] {
  const colours = weft.map(hexOf);
  const [main] = colours;
  const { x, y, sx, sy } = frame;
  const width = round(grid.columns * sx);
  const all: Shape = { kind: "rect", x, y, width, height: round(grid.rows * sy), fill: main! };
  const others = [...new Set(colours)].filter((colour) => colour !== main);
  return [
    all,
    ...others.map((colour): Shape => {
      const picks = fromCells(grid.rows, 1, (row) => colours[row] === colour);
      const wide: Frame = { ...frame, sx: grid.columns * sx };
      return { kind: "path", d: squaresPath(picks), fill: colour, frame: wide, role: "weft" };
    }),
  ];
}
