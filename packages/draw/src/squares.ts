import { type BitGrid, scanRowRuns } from "@drawcord/grid";

/**
 * The raised squares of a grid as one path, counted in cells from the top left, the first pick at the bottom. Runs along
 * a pick become one rectangle, and equal runs on neighbouring picks one taller rectangle, so a figure of solid areas takes
 * a few strokes however many squares it has.
 * @param grid rows are picks, row 0 lowest; raised cells are drawn
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
