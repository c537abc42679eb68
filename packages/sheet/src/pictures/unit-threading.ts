import { type CellFrame, type Picture, palette, roomWide, round, type Shape } from "@drawcord/page";
import { ruling } from "../drawing/ruling.js";
import type { Stretch, Woven } from "../woven.js";
import { label } from "./label.js";
import { pieces } from "./pieces.js";

/** Squares of a strip: no larger than they need be, and no smaller than an eye can follow. */
const LARGEST = 3.1;
const UNITS_A_STRIP = 84;
/** From this size on a square holds the number of its shaft. */
const NUMBERED = 2.6;
/** A strip is at least so wide, for the words below it. */
const LEAST_WIDE = 44;
/** More shafts than this make no picture that is read faster than the list. */
const MOST_SHAFTS = 50;
const MOST_UNITS = 1500;
const SIDE = 7;
const HEAD = 1;

/** Which way the threading is read. */
export type ReadingDirection = "right-to-left" | "left-to-right";

/**
 * The unit threading as it is seen from the weaver's bench, in strips: the back of the loom at the top, shaft 1 lowest,
 * static units in a row of their own above the shafts. Strips come in the order in which they are threaded.
 * @param staticShaft the number that diagrams give to the static row; `X` when there is none
 */
export function threadingPictures(woven: Woven, reading: ReadingDirection, staticShaft?: number): Picture[] {
  const { draft, patternShafts } = woven;
  if (patternShafts > MOST_SHAFTS || draft.threading.length > MOST_UNITS) return [];
  const strips = pieces(draft.threading.length, UNITS_A_STRIP);
  const ordered = reading === "right-to-left" ? strips.reverse() : strips;
  return ordered.map((units, i) => strip(woven, units, i + 1, reading, staticShaft));
}

function strip(
  { draft, patternShafts }: Woven,
  units: Stretch,
  number: number,
  reading: ReadingDirection,
  staticShaft: number | undefined,
): Picture {
  const columns = units.end - units.start;
  const cell = Math.min(LARGEST, (roomWide - 2 * SIDE - 2) / columns);
  const hasStatic = draft.threading.some((shafts) => shafts.length === 0);
  const rows = patternShafts + (hasStatic ? 1 : 0);
  const frame: CellFrame = { x: SIDE, y: HEAD, sx: cell, sy: cell };
  const shapes: Shape[] = [];
  if (hasStatic) {
    shapes.push({ kind: "rect", x: SIDE, y: HEAD, width: columns * cell, height: cell, fill: palette.wash });
  }
  shapes.push(...ruling({ columns, rows, frame }));
  const top = (shaft: number) => round(HEAD + (rows - shaft) * cell);
  for (let unit = units.start; unit < units.end; unit++) {
    const x = round(SIDE + (unit - units.start) * cell);
    const shafts = draft.threading[unit]!;
    if (shafts.length === 0) shapes.push(cross(x, HEAD, cell));
    for (const shaft of shafts) {
      shapes.push({ kind: "rect", x, y: top(shaft), width: cell, height: cell, fill: palette.ink });
      if (cell < NUMBERED) continue;
      shapes.push(
        label(x + cell / 2, top(shaft) + 2.2, `${shaft}`, {
          anchor: "middle",
          size: 1.9,
          fill: palette.paper,
          face: "sans-bold",
        }),
      );
    }
    if ((unit + 1) % (cell < NUMBERED ? 10 : 5) === 0)
      shapes.push(label(x + cell / 2, HEAD + rows * cell + 2.6, `${unit + 1}`, { anchor: "middle" }));
  }
  for (let shaft = 1; shaft <= rows; shaft++) {
    const name = shaft > patternShafts ? (staticShaft === undefined ? "X" : `X ${staticShaft}`) : `${shaft}`;
    for (const [x, anchor] of [
      [SIDE - 1, "end"],
      [SIDE + columns * cell + 1, "start"],
    ] as const) {
      shapes.push(
        label(x, top(shaft) + cell / 2 + 0.7, name, {
          anchor,
          size: Math.min(2, cell),
          face: "sans-bold",
          fill: palette.ink,
        }),
      );
    }
  }
  const foot = HEAD + rows * cell + 6;
  const begins = reading === "right-to-left" ? "← read from the right" : "read from the left →";
  const width = Math.max(LEAST_WIDE, SIDE * 2 + columns * cell);
  const at = reading === "right-to-left" ? Math.max(SIDE + columns * cell, LEAST_WIDE - SIDE) : SIDE;
  shapes.push(
    label(at, foot, begins, { anchor: reading === "right-to-left" ? "end" : "start", fill: palette.accent }),
  );
  const where = `units ${units.start + 1} to ${units.end}`;
  return {
    id: `unit-threading-${number}`,
    caption: `Unit threading, ${where}, from the weaver's bench: the back of the loom at the top`,
    alt: `Unit threading, ${where}: which pattern shaft each unit hangs on, shaft 1 lowest${hasStatic ? ", static units in the shaded row at the top" : ""}. The list of groups says the same in numbers.`,
    drawing: { width, height: foot + 1, shapes },
  };
}

/** A static unit: a cross instead of a square. */
function cross(x: number, y: number, cell: number): Shape {
  const edge = cell * 0.22;
  const arm = round(cell - 2 * edge);
  const [left, right, top] = [round(x + edge), round(x + cell - edge), round(y + edge)];
  return {
    kind: "path",
    d: `M${left} ${top}l${arm} ${arm}M${right} ${top}l-${arm} ${arm}`,
    stroke: palette.ink,
    width: 0.3,
  };
}
