import { squaresPath } from "@drawcord/draw";
import { fromCells } from "@drawcord/grid";
import { type CellFrame, type Picture, palette, roomHigh, roomWide, round, type Shape } from "@drawcord/page";
import type { CardSection } from "../card/sections.js";
import { ruling } from "../drawing/ruling.js";
import type { Stretch, Woven } from "../woven.js";
import { type ChartWindow, keyMap } from "./chart-key.js";
import { label, numbersEvery } from "./label.js";

/** Squares smaller than this are counted badly: the chart is then cut into several sheets. */
const SMALLEST = 1.2;
/** The squares of a chart that is cut. */
const CUT = 1.7;
const LARGEST = 5.5;
/** So many sheets at the most; a longer chart is drawn smaller instead. */
const MOST_SHEETS = 24;
/** Units and rows that neighbouring sheets share. */
const OVERLAP = 2;
/** A chart alone is no higher than this, so that it goes on with its page. */
const HIGH = 128;

const LEFT = 9;
const RIGHT = 16;
const BELOW = 7;

/** The rows that a chart draws, rows that are woven again once, and where a section of them begins. */
interface ChartRows {
  readonly rows: readonly number[];
  readonly sections: readonly { readonly at: Stretch; readonly section: CardSection }[];
}

/**
 * The whole chart, borders too, a square a unit and row: black where the unit is drawn, the first row at the bottom; rows
 * that are woven again and again once. One too large for a page is cut into sheets that share two units and rows, with
 * a map of them.
 */
export function chartPictures(woven: Woven, sections: readonly CardSection[]): Picture[] {
  const list = rowsOf(sections);
  const units = woven.draft.threading.length;
  const wide = roomWide - LEFT - RIGHT;
  const cell = Math.min(LARGEST, wide / units, HIGH / list.rows.length);
  const high = Math.min(LARGEST, wide / units, (roomHigh - BELOW - 12) / list.rows.length);
  const across = cutInto(units, Math.floor(wide / CUT));
  const along = cutInto(list.rows.length, Math.floor((roomHigh - BELOW - 12) / CUT));
  if (high >= SMALLEST || across.length * along.length > MOST_SHEETS) {
    const whole = { units: { start: 0, end: units }, rows: { start: 0, end: list.rows.length } };
    return [chartPicture(woven, list, whole, cell >= 1.6 ? cell : high, "chart-1")];
  }
  const windows = along.flatMap((rows) => across.map((one): ChartWindow => ({ units: one, rows })));
  const sheets = windows.map((window, i) =>
    chartPicture(woven, list, window, CUT, `chart-${i + 1}`, { number: i + 1, of: windows.length }),
  );
  return [keyMap(windows, units, list.rows.length), ...sheets];
}

function rowsOf(sections: readonly CardSection[]): ChartRows {
  let at = 0;
  const placed = sections.map((section) => {
    const start = at;
    at += section.end - section.start;
    return { at: { start, end: at }, section };
  });
  const rows = sections.flatMap(({ start, end }) => Array.from({ length: end - start }, (_, i) => start + i));
  return { rows, sections: placed };
}

/** A stretch in windows of at most `most`, as even as can be, each sharing some with the next. */
function cutInto(length: number, most: number): Stretch[] {
  if (length <= most) return [{ start: 0, end: length }];
  const count = Math.ceil((length - OVERLAP) / (most - OVERLAP));
  const step = (length - OVERLAP) / count;
  return Array.from({ length: count }, (_, i) => ({
    start: Math.round(i * step),
    end: Math.round((i + 1) * step) + OVERLAP,
  }));
}

function chartPicture(
  woven: Woven,
  list: ChartRows,
  { units, rows }: ChartWindow,
  cell: number,
  id: string,
  sheet?: { readonly number: number; readonly of: number },
): Picture {
  const { squares } = woven.expansion;
  const columns = units.end - units.start;
  const height = rows.end - rows.start;
  const rowAt = (at: number) => list.rows[rows.start + at]!;
  const grid = fromCells(height, columns, (at, column) => squares.get(rowAt(at), units.start + column));
  const frame: CellFrame = { x: LEFT, y: 4, sx: cell, sy: cell };
  const paper: Shape[] = [
    ...ruling({ columns, rows: height, frame, before: { columns: units.start, rows: rows.start } }),
    ...numbers(list, units, rows, frame),
    ...times(list, rows, frame, columns * cell),
    ...joins(woven, list, units, rows, frame),
  ];
  const size = { width: LEFT + columns * cell + RIGHT, height: 4 + height * cell + BELOW };
  const drawn: Shape = { kind: "path", d: squaresPath(grid), fill: palette.ink, frame, role: "drawn" };
  const where = `units ${units.start + 1} to ${units.end}, rows ${rowAt(0) + 1} to ${rowAt(height - 1) + 1}`;
  const number = sheet === undefined ? "" : ` sheet ${sheet.number} of ${sheet.of},`;
  return {
    id,
    caption: `Chart,${number} ${where}: black = the unit is drawn (raised)`,
    alt: `Chart,${number} ${where}, first row at the bottom. The lift card says the same in numbers.`,
    drawing: { ...size, shapes: [drawn, ...paper] },
  };
}

/** Unit numbers along the foot and row numbers up the left side, those of the piece. */
function numbers(
  { rows: list, sections }: ChartRows,
  units: Stretch,
  rows: Stretch,
  frame: CellFrame,
): Shape[] {
  const { x, y, sx, sy } = frame;
  const height = rows.end - rows.start;
  const everyUnit = Math.max(5, numbersEvery(sx, 6));
  const everyRow = Math.max(5, numbersEvery(sy, 2.6));
  const apart = Math.ceil(2.6 / sy);
  const starts = new Set([rows.start, ...sections.map(({ at }) => at.start)]);
  const shown: number[] = [];
  for (let at = rows.start; at < rows.end; at++) {
    const round5 = (list[at]! + 1) % everyRow === 0;
    const begins = starts.has(at);
    if ((begins || round5) && at - (shown.at(-1) ?? Number.NEGATIVE_INFINITY) >= apart) shown.push(at);
  }
  const across: number[] = [units.start + 1];
  for (let unit = units.start + 2; unit <= units.end; unit++) {
    if (unit % everyUnit === 0 && unit - units.start - 1 >= 6 / sx) across.push(unit);
  }
  return [
    ...across.map((unit) =>
      label(round(x + (unit - units.start - 0.5) * sx), y + height * sy + 2.8, `${unit}`, {
        anchor: "middle",
      }),
    ),
    ...shown.map((at) =>
      label(x - 1, round(y + (rows.end - at - 0.5) * sy + 0.75), `${list[at]! + 1}`, { anchor: "end" }),
    ),
  ];
}

/** A heavy line where a section begins, and how often its rows are woven. */
function times({ sections }: ChartRows, rows: Stretch, { x, y, sy }: CellFrame, wide: number): Shape[] {
  return sections.flatMap(({ at, section }): Shape[] => {
    const start = Math.max(at.start, rows.start);
    const end = Math.min(at.end, rows.end);
    if (end <= start) return [];
    const [foot, top] = [y + (rows.end - start) * sy, y + (rows.end - end) * sy];
    const line: Shape[] =
      at.start <= rows.start
        ? []
        : [
            {
              kind: "path",
              d: `M${round(x - 2)} ${round(foot)}h${round(wide + 4)}`,
              stroke: palette.accent,
              width: 0.4,
            },
          ];
    if (section.times === 1) return line;
    const right = x + wide + 1.2;
    return [
      ...line,
      {
        kind: "path",
        d: `M${round(right)} ${round(top + 0.4)}h1.4V${round(foot - 0.4)}h-1.4`,
        stroke: palette.accent,
        width: 0.35,
      },
      label(round(right + 2.4), round((top + foot) / 2 + 0.9), `${section.times} times`, {
        fill: palette.accent,
        face: "sans-bold",
        size: 2.6,
      }),
    ];
  });
}

/** Marks on the lines to which the next sheet is laid: triangles that point at it. */
function joins(
  { draft }: Woven,
  list: ChartRows,
  units: Stretch,
  rows: Stretch,
  { x, y, sx, sy }: CellFrame,
): Shape[] {
  const [right, foot] = [x + (units.end - units.start) * sx, y + (rows.end - rows.start) * sy];
  const mark = (d: string): Shape => ({ kind: "path", d, fill: palette.accent });
  const upDown = [x + 3, right - 3];
  const aside = [y + 3, foot - 3];
  const shared = OVERLAP * sx;
  const sharedRows = OVERLAP * sy;
  return [
    ...(units.end < draft.threading.length
      ? aside.map((at) => mark(`M${round(right - shared)} ${round(at - 1.2)}l1.8 1.2l-1.8 1.2z`))
      : []),
    ...(units.start > 0
      ? aside.map((at) => mark(`M${round(x + shared)} ${round(at - 1.2)}l-1.8 1.2l1.8 1.2z`))
      : []),
    ...(rows.end < list.rows.length
      ? upDown.map((at) => mark(`M${round(at - 1.2)} ${round(y + sharedRows)}l1.2 -1.8l1.2 1.8z`))
      : []),
    ...(rows.start > 0
      ? upDown.map((at) => mark(`M${round(at - 1.2)} ${round(foot - sharedRows)}l1.2 1.8l1.2 -1.8z`))
      : []),
  ];
}
