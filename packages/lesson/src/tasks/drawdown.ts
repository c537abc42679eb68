import { squaresDrawing } from "../drawing/squares.js";
import { sayTask, type TaskKind } from "../task.js";
import { cornerOf, type FigureCorner } from "./corner.js";

/** A piece of the drawdown to be filled in. */
export const drawdownTask: TaskKind = {
  summary: "fill a piece of the drawdown from threading, treadling and lifts",
  levels: [1, 2, 3],
  make({ draft }, dice, level) {
    const given = cornerOf(draft, dice, level === 1 ? 12 : 16, level === 1 ? 6 : 8);
    return {
      title: "A piece of the drawdown",
      minutes: 8 + 4 * level,
      points: 2 * given.rows.length,
      ask: [
        sayTask(
          "Fill a square where the end lies over the pick. Under each end stands its ground shaft, at the left of each pick its row, at the right what its treadle raises and sinks; heavy lines part units and rows.",
        ),
        sayTask(
          `Row by row these units are drawn: ${drawnWords(given)}. The units of the piece are ${unitWords(given)}.`,
        ),
      ],
      answers: [],
      fill: {
        id: "drawdown",
        caption: "A piece of the drawdown, the first pick at the bottom",
        blank: cornerDrawing(given, () => false),
        filled: cornerDrawing(given, (end, pick) => given.raised[pick]![end]!),
      },
      steps: [],
      given,
      room: 0,
    };
  },
};

/** `row 3: 5 6; row 4: none`. */
function drawnWords({ drawn }: FigureCorner): string {
  return drawn
    .map(({ row, units }) => `row ${row}: ${units.length === 0 ? "none" : units.join(" ")}`)
    .join("; ");
}

function unitWords({ units }: FigureCorner): string {
  const named = [...new Set(units)];
  return `${named[0]} to ${named.at(-1)}, from left to right`;
}

/** The grid of a piece of cloth, with what decides it at its sides. */
export function cornerDrawing(
  { rows, shafts, treadles, units }: FigureCorner,
  filled: (end: number, pick: number) => boolean,
  right = true,
) {
  const set = (shafts_: readonly number[]) => shafts_.join(" ") || "none";
  return squaresDrawing({
    columns: shafts.length,
    rows: rows.length,
    filled,
    under: (end) => `${shafts[end]}`,
    left: (pick) => (rows[pick] === rows[pick - 1] ? "" : `row ${rows[pick]}`),
    ...(right && {
      right: (pick) => `up ${set(treadles[pick]!.raise)}, down ${set(treadles[pick]!.sink)}`,
    }),
    heavyColumns: units.flatMap((unit, i) => (i > 0 && unit !== units[i - 1] ? [i] : [])),
    heavyRows: rows.flatMap((row, i) => (i > 0 && row !== rows[i - 1] ? [i] : [])),
  });
}
