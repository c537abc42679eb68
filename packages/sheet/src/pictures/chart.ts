import { fromCells } from "@drawcord/grid";
import {
  type Drawing,
  type Frame,
  type Picture,
  palette,
  roomHigh,
  roomWide,
  round,
  type Shape,
} from "@drawcord/page";
import { ruling } from "../drawing/ruling.js";
import { squaresPath } from "../drawing/squares.js";
import type { Stretch, Woven } from "../woven.js";
import { label, numbersEvery } from "./label.js";
import { pieces } from "./pieces.js";

/** Squares smaller than this are counted badly: the chart is then cut into several pictures. */
const SMALLEST = 1.15;

/** So many pictures at the most; a longer chart is drawn smaller instead. */
const MOST_PICTURES = 9;

/** A chart no higher than this leaves room on its page for what comes before it, as long as its squares stay large. */
const LOW = 128;
const LARGE = 2.6;

const LEFT = 8;
const BELOW = 4;

/** The chart of one repeat, a square a unit and row: black where the unit is drawn, the first row at the bottom. */
export function chartPictures(woven: Woven): Picture[] {
  const { units, rows } = woven.repeat;
  const width = roomWide - LEFT - 2;
  const height = roomHigh - BELOW - 10;
  const low = LOW / (rows.end - rows.start);
  const high = low >= LARGE ? low : height / (rows.end - rows.start);
  const whole = Math.min(5.5, width / (units.end - units.start), high);
  const acrossMost = Math.floor(width / 1.6);
  const alongMost = Math.floor(height / 1.6);
  const across = pieces(units.end - units.start, acrossMost);
  const along = pieces(rows.end - rows.start, alongMost);
  if (whole >= SMALLEST || across.length * along.length > MOST_PICTURES) {
    return [chartPicture(woven, units, rows, whole, "chart-1")];
  }
  return along.flatMap((r, i) =>
    across.map((u, j) =>
      chartPicture(
        woven,
        shift(u, units.start),
        shift(r, rows.start),
        1.6,
        `chart-${i * across.length + j + 1}`,
      ),
    ),
  );
}

function shift({ start, end }: Stretch, by: number): Stretch {
  return { start: start + by, end: end + by };
}

function chartPicture(woven: Woven, units: Stretch, rows: Stretch, cell: number, id: string): Picture {
  const { drawn } = woven.expansion;
  const columns = units.end - units.start;
  const height = rows.end - rows.start;
  const grid = fromCells(height, columns, (row, column) => {
    const pick = woven.rowSpans[rows.start + row]!.start;
    const end = woven.unitSpans[units.start + column]!.start;
    return drawn.get(pick, end);
  });
  const frame: Frame = { x: LEFT, y: 1, sx: cell, sy: cell };
  const paper: Shape[] = [
    ...ruling({ columns, rows: height, frame, before: { columns: units.start, rows: rows.start } }),
    ...numbers(units, rows, frame),
  ];
  const sheet = { width: LEFT + columns * cell + 2, height: 1 + height * cell + BELOW };
  const squares: Shape = { kind: "path", d: squaresPath(grid), fill: palette.ink, frame, role: "drawn" };
  const where = `units ${units.start + 1} to ${units.end}, rows ${rows.start + 1} to ${rows.end}`;
  return {
    id,
    caption: `Chart, ${where}: black = the unit is drawn (raised)`,
    alt: `Chart of ${where}, first row at the bottom. The list of lifts says the same in numbers.`,
    drawing: { ...sheet, shapes: [squares, ...paper] },
    blank: { ...sheet, shapes: paper } satisfies Drawing,
  };
}

/** Unit numbers along the foot and row numbers up the left side. */
function numbers(units: Stretch, rows: Stretch, { x, y, sx, sy }: Frame): Shape[] {
  const height = rows.end - rows.start;
  const everyUnit = Math.max(5, numbersEvery(sx, 6));
  const everyRow = Math.max(5, numbersEvery(sy, 2.6));
  const foot = y + height * sy + 2.8;
  return [
    ...printed(units, everyUnit, Math.ceil(6 / sx)).map((unit) =>
      label(round(x + (unit - units.start - 0.5) * sx), foot, `${unit}`, { anchor: "middle" }),
    ),
    ...printed(rows, everyRow, Math.ceil(2.6 / sy)).map((row) =>
      label(x - 1, round(y + (rows.end - row + 0.5) * sy + 0.75), `${row}`, { anchor: "end" }),
    ),
  ];
}

/** The first of a stretch and every round number of it that does not crowd the first, counted from 1. */
function printed({ start, end }: Stretch, every: number, apart: number): number[] {
  const numbers = [start + 1];
  for (let n = start + 2; n <= end; n++) if (n % every === 0 && n - start - 1 >= apart) numbers.push(n);
  return numbers;
}
