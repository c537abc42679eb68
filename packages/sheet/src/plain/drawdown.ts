import { squaresPath } from "@drawcord/draw";
import { crop, fromCells } from "@drawcord/grid";
import { type CellFrame, type Picture, palette, type Shape } from "@drawcord/page";
import { letterOf } from "../card/letters.js";
import { ruling } from "../drawing/ruling.js";
import type { SheetPart } from "../part-names.js";
import { label } from "../pictures/label.js";
import type { PlainContext } from "./context.js";

const CELL = 2.8;
const GAP = 2.5;
const LEFT = 9;
const TOP = 2;
const MOST = 40;
/** More treadles or shafts than this are not drawn: the card tells them. */
const MOST_HARNESS = 24;

/** The draft as it is drawn: threading above, tie-up in the corner, treadling at the right, and the cloth from its first threads. */
export function drawdownPart(context: PlainContext): SheetPart {
  return {
    name: "corner",
    title: "Drawdown, thread by thread",
    blocks: [
      {
        kind: "paragraph",
        tone: "lead",
        text: "The first ends and picks with what makes them. Black is raised; the first pick lies at the bottom, shaft 1 lowest. The letters are the colours of the yarns.",
      },
      { kind: "pictures", pictures: [drawdownPicture(context)] },
    ],
  };
}

function drawdownPicture({ draft, woven, look, moves }: PlainContext): Picture {
  const columns = Math.min(MOST, woven.ends);
  const rows = Math.min(MOST, woven.picks);
  const shafts = Math.min(draft.shafts, MOST_HARNESS);
  const { shedding } = draft;
  const tieUp = shedding.kind === "tie-up" ? shedding.tieUp.slice(0, MOST_HARNESS) : undefined;
  const across = tieUp?.length ?? shafts;
  const clothTop = TOP + CELL + GAP + shafts * CELL + GAP;
  const weftLeft = LEFT + columns * CELL + GAP;
  const right = weftLeft + CELL + GAP;
  const frame = (x: number, y: number): CellFrame => ({ x, y, sx: CELL, sy: CELL });
  const grids = [
    {
      grid: fromCells(shafts, columns, (shaft, end) => draft.threading[end]!.includes(shaft + 1)),
      frame: frame(LEFT, TOP + CELL + GAP),
    },
    {
      grid: crop(woven.expansion.drawdown, { row: 0, column: 0, rows, columns }),
      frame: frame(LEFT, clothTop),
    },
    {
      grid: fromCells(rows, across, (pick, at) => moves[pick]!.includes(at + 1)),
      frame: frame(right, clothTop),
    },
    ...(tieUp === undefined
      ? []
      : [
          {
            grid: fromCells(shafts, across, (shaft, treadle) => tieUp[treadle]!.includes(shaft + 1)),
            frame: frame(right, TOP + CELL + GAP),
          },
        ]),
  ].filter(({ grid }) => grid.columns > 0 && grid.rows > 0);
  const every = (length: number, write: (at: number) => Shape) =>
    Array.from({ length }, (_, i) => i + 1).flatMap((at) => (at === 1 || at % 5 === 0 ? [write(at)] : []));
  const foot = clothTop + rows * CELL + 2.6;
  const small = { size: 1.9 } as const;
  const shapes: Shape[] = [
    ...grids.flatMap(({ grid, frame: at }): Shape[] => [
      { kind: "path", d: squaresPath(grid), fill: palette.ink, frame: at },
      ...ruling({ columns: grid.columns, rows: grid.rows, frame: at }),
    ]),
    ...Array.from({ length: columns }, (_, end) =>
      label(LEFT + (end + 0.5) * CELL, TOP + CELL, letterOf(look.ends[end]!), { anchor: "middle", ...small }),
    ),
    ...Array.from({ length: rows }, (_, pick) =>
      label(weftLeft + CELL / 2, clothTop + (rows - pick) * CELL - 0.7, letterOf(look.picks[pick]!), {
        anchor: "middle",
        ...small,
      }),
    ),
    ...every(columns, (end) =>
      label(LEFT + (end - 0.5) * CELL, foot, `${end}`, { anchor: "middle", ...small }),
    ),
    ...every(rows, (pick) =>
      label(LEFT - 1, clothTop + (rows - pick + 0.75) * CELL, `${pick}`, { anchor: "end", ...small }),
    ),
    ...Array.from({ length: across }, (_, i) =>
      label(right + (i + 0.5) * CELL, foot, `${i + 1}`, { anchor: "middle", ...small }),
    ),
    ...Array.from({ length: shafts }, (_, i) =>
      label(LEFT - 1, TOP + CELL + GAP + (shafts - i - 0.25) * CELL, `${i + 1}`, { anchor: "end", ...small }),
    ),
  ];
  return {
    id: "corner-drawdown",
    caption: `Drawdown, ends 1 to ${columns}, picks 1 to ${rows}: black = the end is raised`,
    alt: `Drawdown of ends 1 to ${columns} and picks 1 to ${rows}, first pick at the bottom, with the threading above and ${tieUp === undefined ? "the lift plan" : "tie-up and treadling"} to the right.`,
    drawing: { width: right + across * CELL + 2, height: foot + 1, shapes },
  };
}
