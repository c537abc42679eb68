import { type BitGrid, scanRowRuns } from "@drawcord/grid";

/**
 * The raised squares of a grid as one path, counted in cells from the top left, the first pick at the bottom. Runs along
 * a pick become one rectangle, and equal runs on neighbouring picks one taller rectangle, so a figure of solid areas takes
 * a few strokes however many squares it has.
 * @example squaresPath(fromText("##.\n##.")) // "M0 0h2v2h-2z"
 */
export function squaresPath(grid: BitGrid): string {
  const parts: string[] = [];
  let open = new Map<number, number>();
  let next = new Map<number, number>();
  let row = 0;
  const close = (key: number, first: number, end: number) => {
    const start = Math.floor(key / grid.columns);
    const width = key - start * grid.columns + 1;
    parts.push(`M${start} ${grid.rows - end}h${width}v${end - first}h-${width}z`);
  };
  const advance = (to: number) => {
    for (; row < to; row++) {
      for (const [key, first] of open) if (!next.has(key)) close(key, first, row);
      open = next;
      next = new Map();
    }
  };
  scanRowRuns(grid, (thread, start, length, raised) => {
    advance(thread);
    if (!raised) return;
    const key = start * grid.columns + length - 1;
    next.set(key, open.get(key) ?? thread);
  });
  advance(grid.rows + 1);
  return parts.join("");
}

/**
 * The squares of a path made by `squaresPath`, as `[column, row]` from the top left: the way back, to check a picture by.
 * @example squaresOf("M0 0h2v1h-2z") // [[0, 0], [1, 0]]
 */
export function squaresOf(path: string): [column: number, row: number][] {
  const squares: [number, number][] = [];
  for (const [, x, y, width, height] of path.matchAll(/M(\d+) (\d+)h(\d+)v(\d+)h-\d+z/g)) {
    for (let r = 0; r < Number(height); r++) {
      for (let c = 0; c < Number(width); c++) squares.push([Number(x) + c, Number(y) + r]);
    }
  }
  return squares;
}
