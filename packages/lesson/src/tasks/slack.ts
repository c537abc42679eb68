import { squaresDrawing } from "../drawing/squares.js";
import type { Dice } from "../random.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

const ENDS = 16;
const PICKS = 12;
/** The slack area is so many ends wide and so many picks high. */
const AREA = 4;

/** The slack area of a small drawdown. */
export const slackTask: TaskKind = {
  summary: "find the slack area: where the threads do not interlace",
  make(_, dice) {
    const { cloth, end, pick } = slackCloth(dice);
    const inside = end + 1 + dice.whole(0, AREA - 1);
    const outside = dice.one(
      Array.from({ length: ENDS }, (_, i) => i + 1).filter((one) => one <= end || one > end + AREA),
    );
    const answers: readonly Answer[] = [
      { question: "Over which ends does the slack area reach?", answer: `${end + 1} to ${end + AREA}` },
      { question: "Over which picks?", answer: `${pick + 1} to ${pick + AREA}` },
      {
        question: `How often does end ${inside} change sides, from pick 1 to pick ${PICKS}?`,
        answer: `${changesOf(cloth, inside - 1)}`,
      },
      { question: `And end ${outside}?`, answer: `${changesOf(cloth, outside - 1)}` },
    ];
    return {
      title: "Find the slack area",
      minutes: 6,
      points: 2 * answers.length,
      ask: [
        sayTask(
          `A filled square is an end over a pick. In one area of ${AREA} ends by ${AREA} picks the threads do not interlace at all: its squares are all filled or all empty. They lie slack there, and the ends that run through it take up less than the others. An end changes sides where a filled square follows an empty one, or an empty one a filled one.`,
        ),
        {
          kind: "pictures",
          pictures: [
            {
              id: "slack",
              caption: "A drawdown: ends under the columns, picks at the left",
              alt: `A drawdown of ${ENDS} ends and ${PICKS} picks.`,
              drawing: squaresDrawing({
                columns: ENDS,
                rows: PICKS,
                filled: (column, row) => cloth[row]![column]!,
                under: (column) => `${column + 1}`,
                left: (row) => `${row + 1}`,
                cell: 3.5,
              }),
            },
          ],
        },
      ],
      answers,
      steps: [],
      given: { cloth, inside, outside },
      room: 0,
    };
  },
};

/** A twill of two and two, either way, with one area that is all up or all down. */
function slackCloth(dice: Dice) {
  for (;;) {
    const start = dice.whole(0, 3);
    const way = dice.one([1, 3]);
    const up = dice.one([true, false]);
    const end = dice.whole(1, ENDS - AREA - 1);
    const pick = dice.whole(1, PICKS - AREA - 1);
    const within = (at: number, from: number) => at >= from && at < from + AREA;
    const cloth = Array.from({ length: PICKS }, (_, row) =>
      Array.from({ length: ENDS }, (_, column) =>
        within(column, end) && within(row, pick) ? up : (column * way + row + start) % 4 < 2,
      ),
    );
    if (slackAreas(cloth) === 1) return { cloth, end, pick };
  }
}

function slackAreas(cloth: readonly (readonly boolean[])[]): number {
  let found = 0;
  for (let pick = 0; pick + AREA <= PICKS; pick++) {
    for (let end = 0; end + AREA <= ENDS; end++) {
      const squares = cloth.slice(pick, pick + AREA).flatMap((row) => row.slice(end, end + AREA));
      if (new Set(squares).size === 1) found++;
    }
  }
  return found;
}

function changesOf(cloth: readonly (readonly boolean[])[], end: number): number {
  return cloth.filter((row, pick) => pick > 0 && row[end] !== cloth[pick - 1]![end]).length;
}
