import { type BitGrid, crop, toText } from "@drawcord/grid";

/** Interlacements worked on at a time, so that a cloth larger than a string may be is drawn as well. */
const BAND = 1 << 20;

/** The drawdown as text, piece by piece: `#` raised, `.` lowered, a line a pick, the last pick on top. */
export function* textDrawing(grid: BitGrid): Iterable<string> {
  for (const [row, rows] of bandsFromTheTop(grid)) {
    yield `${toText(crop(grid, { row, column: 0, rows, columns: grid.columns }))}\n`;
  }
}

/** A line of text for each pick, the first pick first. */
export function* pickLines(grid: BitGrid): Iterable<string> {
  for (let row = 0; row < grid.rows; row++) {
    yield toText(crop(grid, { row, column: 0, rows: 1, columns: grid.columns }));
  }
}

/** First row and number of rows of each band, the topmost band first. */
function* bandsFromTheTop(grid: BitGrid): Iterable<readonly [row: number, rows: number]> {
  const most = Math.max(1, Math.floor(BAND / Math.max(1, grid.columns)));
  for (let end = grid.rows; end > 0; end -= most) {
    const row = Math.max(0, end - most);
    yield [row, end - row];
  }
}
