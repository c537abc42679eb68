import { type Frame, type Picture, palette, type Shape } from "@drawcord/page";
import { ruling } from "../drawing/ruling.js";
import type { Stretch, Woven } from "../woven.js";
import { label } from "./label.js";
import { pieces } from "./pieces.js";

const CELL = 3.1;
const UNITS_A_STRIP = 50;
/** More shafts than this make no picture that is read faster than the list. */
const MOST_SHAFTS = 50;
const MOST_UNITS = 1500;
const SIDE = 7;
const HEAD = 1;

/** Which way the threading is read. */
export type Reading = "right-to-left" | "left-to-right";

/**
 * The unit threading as it is seen from the weaver's bench, in strips: the back of the loom at the top, shaft 1 lowest,
 * static units in a row of their own above the shafts. Strips come in the order in which they are threaded.
 * @param staticShaft the number that diagrams give to the static row; `X` when there is none
 */
export function threadingPictures(woven: Woven, reading: Reading, staticShaft?: number): Picture[] {
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
  reading: Reading,
  staticShaft: number | undefined,
): Picture {
  const columns = units.end - units.start;
  const hasStatic = draft.threading.some((shafts) => shafts.length === 0);
  const rows = patternShafts + (hasStatic ? 1 : 0);
  const frame: Frame = { x: SIDE, y: HEAD, sx: CELL, sy: CELL };
  const shapes: Shape[] = [];
  if (hasStatic) {
    shapes.push({ kind: "rect", x: SIDE, y: HEAD, width: columns * CELL, height: CELL, fill: palette.wash });
  }
  shapes.push(...ruling({ columns, rows, frame }));
  const top = (shaft: number) => HEAD + (rows - shaft) * CELL;
  for (let unit = units.start; unit < units.end; unit++) {
    const x = SIDE + (unit - units.start) * CELL;
    const shafts = draft.threading[unit]!;
    if (shafts.length === 0) shapes.push(cross(x, HEAD));
    for (const shaft of shafts) {
      shapes.push({ kind: "rect", x, y: top(shaft), width: CELL, height: CELL, fill: palette.ink });
      shapes.push(
        label(x + CELL / 2, top(shaft) + 2.2, `${shaft}`, {
          anchor: "middle",
          size: 1.9,
          fill: palette.paper,
          face: "sans-bold",
        }),
      );
    }
    if ((unit + 1) % 5 === 0)
      shapes.push(label(x + CELL / 2, HEAD + rows * CELL + 2.6, `${unit + 1}`, { anchor: "middle" }));
  }
  for (let shaft = 1; shaft <= rows; shaft++) {
    const name = shaft > patternShafts ? (staticShaft === undefined ? "X" : `X ${staticShaft}`) : `${shaft}`;
    for (const [x, anchor] of [
      [SIDE - 1, "end"],
      [SIDE + columns * CELL + 1, "start"],
    ] as const) {
      shapes.push(
        label(x, top(shaft) + 2.3, name, { anchor, size: 2, face: "sans-bold", fill: palette.ink }),
      );
    }
  }
  const foot = HEAD + rows * CELL + 6;
  const begins = reading === "right-to-left" ? "← read from the right" : "read from the left →";
  const at = reading === "right-to-left" ? SIDE + columns * CELL : SIDE;
  shapes.push(
    label(at, foot, begins, { anchor: reading === "right-to-left" ? "end" : "start", fill: palette.accent }),
  );
  const where = `units ${units.start + 1} to ${units.end}`;
  return {
    id: `unit-threading-${number}`,
    caption: `Unit threading, ${where}, from the weaver's bench: the back of the loom at the top`,
    alt: `Unit threading, ${where}: which pattern shaft each unit hangs on, shaft 1 lowest${hasStatic ? ", static units in the shaded row at the top" : ""}. The list of groups says the same in numbers.`,
    drawing: { width: SIDE * 2 + columns * CELL, height: foot + 1, shapes },
  };
}

/** A static unit: a cross instead of a square. */
function cross(x: number, y: number): Shape {
  const arm = CELL - 1.4;
  return {
    kind: "path",
    d: `M${x + 0.7} ${y + 0.7}l${arm} ${arm}M${x + 0.7 + arm} ${y + 0.7}l-${arm} ${arm}`,
    stroke: palette.ink,
    width: 0.35,
  };
}
