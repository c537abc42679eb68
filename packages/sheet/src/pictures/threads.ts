import { colourOf, type Rgb, squaresPath } from "@drawcord/draw";
import { type BitGrid, fromCells } from "@drawcord/grid";
import { type CellFrame, round, type Shape } from "@drawcord/page";

/** The colours of a cloth's threads. */
export interface ThreadColours {
  /** The warp of each end. */
  readonly warp: readonly Rgb[];
  /** The weft of each pick. */
  readonly weft: readonly Rgb[];
}

/**
 * Cloth thread by thread: the weft lies below as bands of colour, the ends that lie on top over it as one path.
 * @param grid picks x ends as they are seen, 1 where the end lies on top
 * @param frame the cell of one interlacement
 */
export function threads(grid: BitGrid, colours: ThreadColours, frame: CellFrame): Shape[] {
  return [...bands(grid, colours.weft, frame), ...raised(grid, colours.warp, frame)];
}

/** The ends on top, a path a colour. */
function raised(grid: BitGrid, warp: readonly Rgb[], frame: CellFrame): Shape[] {
  const ends = warp.map(colourOf);
  const colours = [...new Set(ends)];
  return colours.map((colour): Shape => {
    const own =
      colours.length === 1
        ? grid
        : fromCells(grid.rows, grid.columns, (row, end) => ends[end] === colour && grid.get(row, end));
    return { kind: "path", d: squaresPath(own), fill: colour, frame, role: "raised" };
  });
}

/** The first weft's colour all over, and every other weft's on its own picks. */
function bands(grid: BitGrid, weft: readonly Rgb[], frame: CellFrame): Shape[] {
  const colours = weft.map(colourOf);
  const [main] = colours;
  const { x, y, sx, sy } = frame;
  const width = round(grid.columns * sx);
  const all: Shape = { kind: "rect", x, y, width, height: round(grid.rows * sy), fill: main! };
  const others = [...new Set(colours)].filter((colour) => colour !== main);
  return [
    all,
    ...others.map((colour): Shape => {
      const picks = fromCells(grid.rows, 1, (row) => colours[row] === colour);
      const wide: CellFrame = { ...frame, sx: grid.columns * sx };
      return { kind: "path", d: squaresPath(picks), fill: colour, frame: wide, role: "weft" };
    }),
  ];
}
