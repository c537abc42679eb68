import { fromCells } from "@drawcord/grid";
import type { Picture } from "../document/types.js";
import { palette } from "../drawing/palette.js";
import { ruling } from "../drawing/ruling.js";
import type { Frame, Shape } from "../drawing/shape.js";
import { squaresPath } from "../drawing/squares.js";
import type { Stretch, Woven } from "../woven.js";
import { label, numbersEvery } from "./label.js";
import { BETWEEN_PICTURES, roomWide, strips } from "./size.js";

const ROW = 3.4;
const ROWS_A_STRIP = 55;
/** More handles than this fill no strip that can be read; the list of lifts serves instead. */
const MOST_HANDLES = 90;
/** More rows than this are a book and no plan; the list of lifts serves instead. */
const MOST_ROWS = 1200;
/** Handles narrower than this are miscounted, unless there are too many to be wider. */
const NARROWEST = 2.7;
const LEFT = 13;
const HEAD = 4;

/**
 * The lift plan in strips, each read from its foot up: a black square where the handle is pulled, every row numbered and
 * with a box to tick. None where there are too many handles or rows to draw.
 */
export function liftPlanPictures(woven: Woven): Picture[] {
  const { draft, patternShafts } = woven;
  if (patternShafts === 0 || patternShafts > MOST_HANDLES || draft.lifts.length > MOST_ROWS) return [];
  const cell = cellWidth(patternShafts);
  return strips(draft.lifts.length, ROWS_A_STRIP).map((rows, i) => strip(woven, rows, cell, i + 1));
}

/** As wide as lets most strips stand side by side without handles that crowd each other. */
function cellWidth(handles: number): number {
  for (let strips = 4; strips > 0; strips--) {
    const cell = ((roomWide - BETWEEN_PICTURES * (strips - 1)) / strips - LEFT - 2) / handles;
    if (cell >= NARROWEST || strips === 1) return Math.min(ROW, cell);
  }
  return ROW;
}

function strip({ draft, patternShafts }: Woven, rows: Stretch, cell: number, number: number): Picture {
  const height = rows.end - rows.start;
  const frame: Frame = { x: LEFT, y: HEAD, sx: cell, sy: ROW };
  const grid = fromCells(height, patternShafts, (row, shaft) =>
    draft.lifts[rows.start + row]!.includes(shaft + 1),
  );
  const pulled: Shape = { kind: "path", d: squaresPath(grid), fill: palette.ink, frame, role: "drawn" };
  const paper: Shape[] = [...ruling({ columns: patternShafts, rows: height, frame })];
  const every = numbersEvery(cell, 3);
  for (let shaft = 1; shaft <= patternShafts; shaft++) {
    if (every > 1 && shaft % every !== 0 && shaft !== 1) continue;
    const x = LEFT + (shaft - 0.5) * cell;
    const options = { anchor: "middle", size: 2, face: "sans-bold", fill: palette.ink } as const;
    paper.push(label(x, HEAD - 1, `${shaft}`, options));
    paper.push(label(x, HEAD + height * ROW + 2.6, `${shaft}`, options));
  }
  for (let row = rows.start; row < rows.end; row++) {
    const y = HEAD + (height - 1 - (row - rows.start)) * ROW;
    paper.push(label(8, y + 2.45, `${row + 1}`, { anchor: "end", size: 2.3, fill: palette.ink }));
    paper.push({
      kind: "rect",
      x: 9.4,
      y: y + 0.7,
      width: 2,
      height: 2,
      stroke: palette.rule,
      strokeWidth: 0.15,
    });
  }
  const sheet = { width: LEFT + patternShafts * cell + 2, height: HEAD + height * ROW + 4 };
  const where = `rows ${rows.start + 1} to ${rows.end}`;
  return {
    id: `lift-plan-${number}`,
    caption: `Rows ${rows.start + 1} to ${rows.end}, read upwards`,
    alt: `Lift plan, ${where}: handles 1 to ${patternShafts} across, a black square where a handle is pulled, row ${rows.start + 1} at the foot. The list of lifts says the same in numbers.`,
    drawing: { ...sheet, shapes: [pulled, ...paper] },
  };
}
