import { type Answer, sayTask, type TaskKind } from "../task.js";
import { cornerOf } from "./corner.js";
import { cornerDrawing } from "./drawdown.js";

/** From the cloth back to the lift. */
export const backTask: TaskKind = {
  summary: "from a piece of cloth back to the units that each row draws",
  levels: [2, 3],
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
          `A filled square is an end over a pick. Under each end stands its ground shaft, at the right of each pick what its treadle raises and sinks. The units are ${named[0]} to ${named.at(-1)}, from left to right. Name the units that each row draws.`,
        ),
        {
          kind: "pictures",
          pictures: [
            {
              id: "cloth",
              caption: "A piece of cloth, the first pick at the bottom",
              alt: `A drawdown of ${given.shafts.length} ends and ${given.rows.length} picks.`,
              drawing: cornerDrawing(given, (end, pick) => given.raised[pick]![end]!),
            },
          ],
        },
      ],
      answers,
      steps: [],
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
