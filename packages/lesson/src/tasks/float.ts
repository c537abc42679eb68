import { smallDrawdown } from "../drawing/small-drawdown.js";
import type { Dice } from "../random.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

const ENDS = 14;
const PICKS = 10;

/** The longest float and the loose place of a small drawdown. */
export const floatTask: TaskKind = {
  summary: "find the longest float along an end and along a pick",
  make(_, dice, level) {
    const cloth = twillWith(dice, level);
    const ends = Array.from({ length: ENDS }, (_, end) => cloth.map((pick) => pick[end]!));
    const warp = longest(ends);
    const weft = longest(cloth.map((pick) => pick.map((raised) => !raised)));
    const answers: readonly Answer[] = [
      {
        question: "How many picks does the longest warp float on the face pass over?",
        answer: `${warp.length}`,
      },
      { question: "On which end does it lie?", answer: `${warp.threads[0]}`, ...also(warp.threads) },
      {
        question: "How many ends does the longest weft float on the face pass over?",
        answer: `${weft.length}`,
      },
      { question: "On which pick does it lie?", answer: `${weft.threads[0]}`, ...also(weft.threads) },
    ];
    return {
      title: "Find the float",
      minutes: 8,
      points: 8,
      ask: [
        sayTask(
          "A filled square is an end over a pick. Find the longest run of filled squares along an end, and the longest run of empty ones along a pick.",
        ),
        smallDrawdown("float", "A drawdown: ends under the columns, picks at the left", cloth, { cell: 3.5 }),
      ],
      answers,
      steps: [],
      given: cloth,
      room: 0,
    };
  },
};

/** A twill in which some crossings are changed, so that it floats where it should not. */
function twillWith(dice: Dice, level: number): readonly (readonly boolean[])[] {
  const over = dice.whole(1, 2);
  const start = dice.whole(0, 3);
  const cloth = Array.from({ length: PICKS }, (_, pick) =>
    Array.from({ length: ENDS }, (_, end) => (end + pick + start) % 4 < over),
  );
  for (let slip = 0; slip < 1 + level; slip++) {
    const pick = dice.whole(1, PICKS - 2);
    const end = dice.whole(1, ENDS - 2);
    cloth[pick]![end] = !cloth[pick]![end];
  }
  return cloth;
}

/** The longest run of true along any thread, and the threads that have one, from 1. */
function longest(threads: readonly (readonly boolean[])[]): {
  readonly length: number;
  readonly threads: readonly number[];
} {
  const runs = threads.map((thread) => {
    let most = 0;
    let run = 0;
    for (const on of thread) {
      run = on ? run + 1 : 0;
      most = Math.max(most, run);
    }
    return most;
  });
  const length = Math.max(...runs);
  return { length, threads: runs.flatMap((run, i) => (run === length ? [i + 1] : [])) };
}

function also(threads: readonly number[]): { readonly also?: readonly string[] } {
  return threads.length > 1 ? { also: threads.slice(1).map(String) } : {};
}
