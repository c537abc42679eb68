import { wovenSmall } from "../cloth.js";
import { squaresDrawing } from "../drawing/squares.js";
import type { Dice } from "../random.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";
import { tieUpTable } from "./drawdown.js";

const UNITS = 4;
const ROWS = 4;
const SIZE = 4;

/** From the cloth back to the threading. */
export const threadTask: TaskKind = {
  summary: "from a piece of cloth and its lifts back to the threading of the units",
  make(_, dice) {
    const lifts = unlikeLifts(dice);
    const threading = dice.shuffled([1, 2, 3, 4]).slice(0, UNITS);
    const { raised, treadles } = wovenSmall({ threading, lifts, size: SIZE, order: dice.one(ORDERS) });
    const answers = threading.map(
      (handle, unit): Answer => ({
        question: `On which handle does unit ${unit + 1} hang?`,
        answer: `${handle}`,
      }),
    );
    return {
      title: "From the cloth back to the threading",
      minutes: 10,
      points: 2 * answers.length,
      ask: [
        sayTask(
          `A filled square is an end over a pick. Each of the ${UNITS} units has ${SIZE} ends, on ground shafts 1 2 3 4, and each row ${SIZE} picks, on treadles 1 2 3 4 in turn. ${lifts.map((lift, row) => `${row === 0 ? "Row" : "row"} ${row + 1} draws ${lift.length === 1 ? "handle" : "handles"} ${lift.join(" ")}`).join("; ")}. Each unit hangs on one handle: which?`,
        ),
        tieUpTable(treadles),
        {
          kind: "pictures",
          pictures: [
            {
              id: "cloth",
              caption: "The cloth, the first pick at the bottom",
              alt: `A drawdown of ${UNITS * SIZE} ends and ${ROWS * SIZE} picks.`,
              drawing: squaresDrawing({
                columns: UNITS * SIZE,
                rows: ROWS * SIZE,
                filled: (end, pick) => raised[pick]![end]!,
                under: (end) => `${(end % SIZE) + 1}`,
                left: (pick) => (pick % SIZE === 0 ? `row ${pick / SIZE + 1}` : ""),
                right: (pick) => `treadle ${(pick % SIZE) + 1}`,
                heavyColumns: [4, 8, 12],
                heavyRows: [4, 8, 12],
                cell: 3.4,
              }),
            },
          ],
        },
      ],
      answers,
      steps: [],
      given: { lifts, treadles, raised },
      room: 0,
    };
  },
};

/** Shafts sunk pick by pick: of mirrored pairs that cut clean all round. */
const ORDERS = [
  [4, 3, 2, 1],
  [4, 2, 3, 1],
] as const;

/** Rows in which no two handles are held alike, and none in no row, so that the cloth tells them apart. */
function unlikeLifts(dice: Dice): readonly (readonly number[])[] {
  const columns = dice.shuffled(Array.from({ length: 15 }, (_, i) => i + 1)).slice(0, 4);
  const lifts = Array.from({ length: ROWS }, (_, row) =>
    [1, 2, 3, 4].filter((handle) => (columns[handle - 1]! >> row) & 1),
  );
  return lifts.every((lift) => lift.length > 0) ? lifts : unlikeLifts(dice);
}
