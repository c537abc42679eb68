import { fromCells } from "@drawcord/grid";
import {
  BETWEEN_PICTURES,
  type Frame,
  type Picture,
  palette,
  roomWide,
  round,
  type Shape,
} from "@drawcord/page";
import { ruling } from "../drawing/ruling.js";
import { squaresPath } from "../drawing/squares.js";
import type { Woven } from "../woven.js";
import { label, numbersEvery } from "./label.js";
import { strips } from "./pieces.js";

const ROW = 3.2;
const ROWS_A_STRIP = 55;
/** More handles than this fill no strip that can be read; the list of lifts serves instead. */
const MOST_HANDLES = 90;
/** More rows than this are a book and no plan; the list of lifts serves instead. */
const MOST_ROWS = 1200;
/** Handles narrower than this are miscounted, unless there are too many to be wider. */
const NARROWEST = 2.7;
const LEFT = 8;
const HEAD = 4;
const BOX = 2;
const BOX_PITCH = 2.6;
/** Room beside the boxes for how often the rows are woven. */
const TIMES = 17;

/** A row that the plan draws: its number from 0, and how often its section is woven. */
interface PlanRow {
  readonly row: number;
  readonly times: number;
  /** Whether its section begins with it. */
  readonly begins: boolean;
}

/**
 * The lift plan in strips, each read from its foot up: a black square where the handle is pulled, every row numbered and
 * with a box to tick for each time that it is woven. Rows that are woven again are drawn once, with a bracket. None where
 * there are too many handles or rows to draw.
 * @param mostBoxes rows that are woven more often than this have one box
 */
export function liftPlanPictures(woven: Woven, mostBoxes: number): Picture[] {
  const { patternShafts, sections } = woven;
  const rows = sections.flatMap(({ start, end, times }) =>
    Array.from({ length: end - start }, (_, i): PlanRow => ({ row: start + i, times, begins: i === 0 })),
  );
  if (patternShafts === 0 || patternShafts > MOST_HANDLES || rows.length > MOST_ROWS) return [];
  const repeats = sections.some(({ times }) => times > 1);
  const boxes = Math.max(...sections.map(({ times }) => boxesOf(times, mostBoxes)));
  const beside = 1.5 + boxes * BOX_PITCH + (repeats ? TIMES : 0);
  const cell = cellWidth(patternShafts, LEFT + beside);
  return strips(rows.length, ROWS_A_STRIP).map(({ start, end }, i) =>
    strip(woven, rows.slice(start, end), { cell, beside, boxes, mostBoxes, number: i + 1 }),
  );
}

function boxesOf(times: number, mostBoxes: number): number {
  return times <= mostBoxes ? times : 1;
}

/** As wide as lets most strips stand side by side without handles that crowd each other. */
function cellWidth(handles: number, around: number): number {
  for (let strips = 4; strips > 0; strips--) {
    const cell = ((roomWide - BETWEEN_PICTURES * (strips - 1)) / strips - around) / handles;
    if (cell >= NARROWEST || strips === 1) return Math.min(ROW, cell);
  }
  return ROW;
}

/** How a strip is drawn. */
interface StripLook {
  readonly cell: number;
  /** Room for boxes and brackets, in mm. */
  readonly beside: number;
  /** Boxes of the rows that have most of them. */
  readonly boxes: number;
  readonly mostBoxes: number;
  readonly number: number;
}

function strip({ draft, patternShafts }: Woven, rows: readonly PlanRow[], look: StripLook): Picture {
  const { cell, beside, mostBoxes, number } = look;
  const frame: Frame = { x: LEFT, y: HEAD, sx: cell, sy: ROW };
  const grid = fromCells(rows.length, patternShafts, (row, shaft) =>
    draft.lifts[rows[row]!.row]!.includes(shaft + 1),
  );
  const right = LEFT + patternShafts * cell;
  const top = (at: number) => HEAD + (rows.length - 1 - at) * ROW;
  const paper: Shape[] = [...ruling({ columns: patternShafts, rows: rows.length, frame })];
  const every = numbersEvery(cell, 3);
  for (let shaft = 1; shaft <= patternShafts; shaft++) {
    if (every > 1 && shaft % every !== 0 && shaft !== 1) continue;
    const x = round(LEFT + (shaft - 0.5) * cell);
    const options = { anchor: "middle", size: 2, face: "sans-bold", fill: palette.ink } as const;
    paper.push(label(x, HEAD - 1, `${shaft}`, options));
    paper.push(label(x, HEAD + rows.length * ROW + 2.6, `${shaft}`, options));
  }
  for (const [at, { row, times, begins }] of rows.entries()) {
    const y = top(at);
    paper.push(label(LEFT - 1, y + 2.4, `${row + 1}`, { anchor: "end", size: 2.3, fill: palette.ink }));
    for (let box = 0; box < boxesOf(times, mostBoxes); box++) {
      paper.push({
        kind: "rect",
        x: round(right + 1.5 + box * BOX_PITCH),
        y: round(y + 0.6),
        width: BOX,
        height: BOX,
        stroke: palette.rule,
        strokeWidth: 0.15,
      });
    }
    if (begins && row > 0) {
      paper.push({
        kind: "path",
        d: `M1 ${round(y + ROW)}H${round(right + beside - 1)}`,
        stroke: palette.accent,
        width: 0.3,
      });
    }
  }
  paper.push(...brackets(rows, right + 1.5 + look.boxes * BOX_PITCH + 1, top));
  const pulled: Shape = { kind: "path", d: squaresPath(grid), fill: palette.ink, frame, role: "drawn" };
  const where = rowsText(rows);
  return {
    id: `lift-plan-${number}`,
    caption: `${where.charAt(0).toUpperCase()}${where.slice(1)}, read upwards`,
    alt: `Lift plan, ${where}: handles 1 to ${patternShafts} across, a black square where a handle is pulled, the first row at the foot. The list of lifts says the same in numbers.`,
    drawing: { width: right + beside, height: HEAD + rows.length * ROW + 4, shapes: [pulled, ...paper] },
  };
}

/** Rows of a strip that belong together, from its foot up. */
function runs(
  rows: readonly PlanRow[],
): { readonly from: number; readonly to: number; readonly times: number }[] {
  const found: { from: number; to: number; times: number }[] = [];
  for (const [at, { times, begins }] of rows.entries()) {
    const last = found.at(-1);
    if (begins || last === undefined) found.push({ from: at, to: at, times });
    else last.to = at;
  }
  return found;
}

/** How often rows are woven, beside them. */
function brackets(rows: readonly PlanRow[], x: number, top: (at: number) => number): Shape[] {
  return runs(rows)
    .filter(({ times }) => times > 1)
    .flatMap(({ from, to, times }): Shape[] => {
      const [high, low] = [top(to) + 0.5, top(from) + ROW - 0.5];
      return [
        {
          kind: "path",
          d: `M${round(x)} ${round(high)}h1.2V${round(low)}h-1.2`,
          stroke: palette.accent,
          width: 0.3,
        },
        label(round(x + 2.4), round((high + low) / 2 + 0.8), `${times} times`, {
          fill: palette.accent,
          face: "sans-bold",
          size: 2.6,
        }),
      ];
    });
}

/** `rows 1 to 9, 10 to 38 (woven 12 times)` */
function rowsText(rows: readonly PlanRow[]): string {
  const parts = runs(rows).map(({ from, to, times }) => {
    const again = times > 1 ? ` (woven ${times} times)` : "";
    return `${rows[from]!.row + 1} to ${rows[to]!.row + 1}${again}`;
  });
  return `rows ${parts.join(", ")}`;
}
