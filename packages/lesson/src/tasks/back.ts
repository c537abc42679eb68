import { type Answer, sayTask, type TaskKind } from "../task.js";
import { casesOnBoard } from "./cases.js";
import { cornerOf, treadlesOf } from "./corner.js";
import { cornerDrawing, tieUpTable } from "./drawdown.js";

/** From the cloth back to the lift. */
export const backTask: TaskKind = {
  summary: "from a piece of cloth back to the units that each row draws",
  make({ draft }, dice) {
    const given = cornerOf(draft, dice, 16, 8);
    const named = [...new Set(given.units)];
    const answers = given.drawn.map(({ row, units }): Answer => {
      const told = named.filter((unit) => isTold(given, row, unit));
      const open = named.filter((unit) => !told.includes(unit));
      return {
        question: `Which units does row ${row} draw?`,
        answer: units.filter((unit) => told.includes(unit)).join(" ") || "none",
        ...(open.length > 0
          ? { also: [`${open.join(" ")} as well or not: these picks do not show it`] }
          : {}),
      };
    });
    return {
      title: "From the cloth back to the lift",
      minutes: 12,
      points: 6,
      ask: [
        sayTask(
          `Under each end stands its ground shaft, at the right of each pick its treadle; heavy lines part the units, ${named[0]} to ${named.at(-1)} from left to right. Look at the squares whose shaft the treadle neither raises nor sinks: which units does each row draw?`,
        ),
        tieUpTable(treadlesOf(draft.ground).treadles),
        {
          kind: "pictures",
          pictures: [
            {
              id: "cloth",
              caption: "A piece of cloth, the first pick at the bottom",
              alt: `A drawdown of ${given.shafts.length} ends and ${given.rows.length} picks.`,
              drawing: cornerDrawing(given, (end, pick) => given.raised[pick]![end]!, 4),
            },
          ],
        },
      ],
      answers,
      steps: [],
      drawn: casesOnBoard(given),
      given,
      room: 0,
    };
  },
};

/** Whether any crossing of a unit in a row shows if it is drawn: one that the treadle neither raises nor sinks. */
function isTold(
  { rows, shafts, treadles, units }: ReturnType<typeof cornerOf>,
  row: number,
  unit: number,
): boolean {
  return treadles.some(
    ({ raise, sink }, pick) =>
      rows[pick] === row &&
      shafts.some((shaft, end) => units[end] === unit && !raise.includes(shaft) && !sink.includes(shaft)),
  );
}
