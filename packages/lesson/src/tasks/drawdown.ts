import type { Block } from "@drawcord/page";
import { printShafts } from "@drawcord/units";
import { squaresDrawing } from "../drawing/squares.js";
import { sayTask, type TaskKind } from "../task.js";
import { casesOnBoard } from "./cases.js";
import { cornerOf, type FigureCorner, treadlesOf } from "./corner.js";

/** A piece of the drawdown to be filled in. */
export const drawdownTask: TaskKind = {
  summary: "fill a piece of the drawdown from threading, tie-up, treadling and lifts",
  make({ draft }, dice, level) {
    const given = cornerOf(draft, dice, level === 1 ? 12 : 16, level === 1 ? 6 : 8);
    return {
      title: "A piece of the drawdown",
      minutes: 8 + 4 * level,
      points: 2 * given.rows.length,
      ask: [
        sayTask(
          "Fill a square where the end lies over the pick. Under each end stands its ground shaft, at the left of each pick its row, at the right its treadle; heavy lines part units and rows. A shaft that the treadle neither raises nor sinks is left to the pattern harness.",
        ),
        sayTask(`${drawnWords(given)} The piece is of units ${unitWords(given)}, from left to right.`),
        tieUpTable(treadlesOf(draft.ground).treadles),
      ],
      answers: [],
      fill: {
        id: "drawdown",
        caption: "A piece of the drawdown, the first pick at the bottom",
        blank: cornerDrawing(given, () => false),
        filled: cornerDrawing(given, (end, pick) => given.raised[pick]![end]!),
      },
      steps: [],
      drawn: casesOnBoard(given),
      given,
      room: 0,
    };
  },
};

/** The tie-up, a treadle a column, so that it is no longer than two lines. */
export function tieUpTable(treadles: FigureCorner["treadles"]): Block {
  const set = (shafts: readonly number[]) => (shafts.length === 0 ? "none" : printShafts(shafts));
  return {
    kind: "table",
    id: "tie-up",
    caption: "The tie-up",
    columns: [{ title: "Treadle", kind: "head" }, ...treadles.map((_, i) => ({ title: `${i + 1}` }))],
    rows: [
      ["raises shafts", ...treadles.map(({ raise }) => set(raise))],
      ["sinks shafts", ...treadles.map(({ sink }) => set(sink))],
    ],
  };
}

/** `Row 3 draws units 5 and 6; row 4 draws none.` */
function drawnWords({ drawn }: FigureCorner): string {
  const said = drawn.map(({ row, units }) => {
    if (units.length === 0) return `row ${row} draws none of the units of this piece`;
    return `row ${row} draws ${units.length === 1 ? "unit" : "units"} ${printShafts(units)}`;
  });
  const [first, ...rest] = said;
  return `${[`R${first!.slice(1)}`, ...rest].join("; ")}.`;
}

function unitWords({ units }: FigureCorner): string {
  const named = [...new Set(units)];
  return `${named[0]} to ${named.at(-1)}`;
}

/** The grid of a piece of cloth, with what decides it at its sides. */
export function cornerDrawing(
  { feet, rows, shafts, units }: FigureCorner,
  filled: (end: number, pick: number) => boolean,
  cell = 5,
) {
  return squaresDrawing({
    columns: shafts.length,
    rows: rows.length,
    filled,
    under: (end) => `${shafts[end]}`,
    left: (pick) => (rows[pick] === rows[pick - 1] ? "" : `row ${rows[pick]}`),
    right: (pick) => `treadle ${feet[pick]}`,
    heavyColumns: units.flatMap((unit, i) => (i > 0 && unit !== units[i - 1] ? [i] : [])),
    heavyRows: rows.flatMap((row, i) => (i > 0 && row !== rows[i - 1] ? [i] : [])),
    cell,
  });
}
