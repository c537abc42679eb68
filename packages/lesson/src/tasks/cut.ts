import { wovenSmall } from "../cloth.js";
import { smallDrawdown } from "../drawing/small-drawdown.js";
import type { Dice } from "../random.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

const SIZE = 4;

/** The open cuts of a small figure. */
export const cutTask: TaskKind = {
  summary: "find the open cuts: where figure and ground meet and a thread can slip",
  make(_, dice) {
    const cloth = openCloth(dice);
    const places = opensOf(cloth);
    const list = (found: readonly number[]) => found.join(" ") || "none";
    const answers: readonly Answer[] = [
      {
        question: "Left edge, between ends 4 and 5: open at which of picks 1 to 4?",
        answer: list(places.left),
      },
      {
        question: "Right edge, between ends 8 and 9: open at which of picks 1 to 4?",
        answer: list(places.right),
      },
      {
        question: "Top edge, between picks 4 and 5: open at which of ends 5 to 8?",
        answer: list(places.top),
      },
      {
        question: "At how many places is the cut open?",
        answer: `${places.left.length + places.right.length + places.top.length}`,
      },
    ];
    return {
      title: "Find the open cut",
      minutes: 6,
      points: 2 * answers.length,
      ask: [
        sayTask(
          "A filled square is an end over a pick. The figure stands within the heavy lines, ends 5 to 8 and picks 1 to 4; around it lies the ground. Across its edge, one of two neighbouring squares should be filled and the other empty: there they cut. Where both are filled or both empty, the cut is open, and a thread can slip. The foot of the piece is left out.",
        ),
        smallDrawdown("cut", "A figure in its ground: ends under the columns, picks at the left", cloth, {
          heavyColumns: [SIZE, 2 * SIZE],
          heavyRows: [SIZE],
          cell: 4,
        }),
      ],
      answers,
      steps: [],
      given: cloth,
      room: 0,
    };
  },
};

/** A figure of one unit and one row that leaves a few places open, and not all. */
function openCloth(dice: Dice): readonly (readonly boolean[])[] {
  for (;;) {
    const raise = dice.shuffled([1, 2, 3, 4]);
    const order = dice.shuffled([1, 2, 3, 4]);
    if (raise.some((shaft, pick) => shaft === order[pick])) continue;
    const { raised } = wovenSmall({ threading: [0, 1, 0], lifts: [[1], []], size: SIZE, order, raise });
    const { left, right, top } = opensOf(raised);
    const open = left.length + right.length + top.length;
    if (open >= 2 && open <= 6) return raised;
  }
}

/** Picks and ends at which the edges are open, from 1. */
function opensOf(cloth: readonly (readonly boolean[])[]) {
  const picks = [0, 1, 2, 3];
  const side = (end: number) => picks.filter((pick) => cloth[pick]![end - 1] === cloth[pick]![end]);
  const from1 = (list: readonly number[]) => list.map((one) => one + 1);
  return {
    left: from1(side(SIZE)),
    right: from1(side(2 * SIZE)),
    top: from1([4, 5, 6, 7].filter((end) => cloth[SIZE - 1]![end] === cloth[SIZE]![end])),
  };
}
