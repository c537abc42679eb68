import { boardOf } from "../board.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

/** Weaves with the ends of their repeat and the intersections of a pick in it. */
const WEAVES = [
  { name: "plain weave", ends: 2, intersections: 2 },
  { name: "2/2 twill", ends: 4, intersections: 2 },
  { name: "1/3 broken twill", ends: 4, intersections: 2 },
  { name: "a satin of 5 ends", ends: 5, intersections: 2 },
  { name: "a satin of 8 ends", ends: 8, intersections: 2 },
] as const;

/** A sett from the wraps of a yarn. */
export const settTask: TaskKind = {
  summary: "choose a sett from the wraps of a yarn and the weave",
  make(_, dice, level) {
    const { ends, intersections, name } = dice.one(WEAVES);
    const wraps = dice.whole(12, 40);
    const firm = dice.one([75, 80, 85]);
    let dents = 0;
    const board = boardOf();
    const closest = board.line({
      words: "closest sett = wraps × ends of the repeat ÷ (ends of the repeat + intersections)",
      symbols: "t = w × e ÷ (e + i)",
      sum: `${wraps} × ${ends} ÷ (${ends} + ${intersections})`,
      value: (wraps * ends) / (ends + intersections),
      decimals: 1,
      unit: "ends in a cm",
    });
    const working = board.line({
      words: "sett for this cloth = closest sett × share ÷ 100",
      symbols: "d = t × q ÷ 100",
      sum: `${closest.toFixed(1)} × ${firm} ÷ 100`,
      value: (closest * firm) / 100,
      decimals: 1,
      unit: "ends in a cm",
    });
    const answers: Answer[] = [
      {
        question: "What is the closest sett? (1 decimal)",
        answer: `${closest.toFixed(1)} ends in a cm`,
        within: "0.2 ends in a cm",
      },
      {
        question: "Which sett do you take? (1 decimal)",
        answer: `${working.toFixed(1)} ends in a cm`,
        within: "0.5 ends in a cm",
      },
    ];
    if (level > 1) {
      dents = dice.one(reedsFor(working));
      const each = Math.max(1, Math.round((working * 10) / dents));
      board.line({
        words: "ends in a dent = ends in a cm × 10 ÷ dents in 10 cm",
        symbols: "k = d × 10 ÷ r",
        sum: `${working.toFixed(1)} × 10 ÷ ${dents}`,
        value: (working * 10) / dents,
        decimals: 2,
        unit: "in a dent",
      });
      answers.push({
        question: `How many ends in a dent, the same in each, come nearest in a reed of ${dents} dents in 10 cm?`,
        answer: `${each}`,
      });
    }
    return {
      title: "Choose a sett",
      minutes: 6,
      points: 2 * answers.length,
      ask: [
        sayTask(
          `A yarn wraps ${wraps} times in a cm, laid side by side without pressing. It is to be woven in ${name}: the repeat has ${ends} ends, and a pick changes sides ${intersections} times in it. Take ${firm} % of the closest sett.`,
        ),
      ],
      answers,
      steps: board.steps,
      given: { wraps, ends, intersections, firm, dents },
      room: 15,
    };
  },
};

/** Reeds in which one number of ends in a dent comes clearly nearest to a sett. */
function reedsFor(sett: number): readonly number[] {
  const reeds = [40, 50, 60, 70, 80, 100];
  const clear = reeds.filter((reed) => {
    const each = (sett * 10) / reed;
    return each > 0.7 && each < 4.4 && Math.abs((each % 1) - 0.5) > 0.12;
  });
  return clear.length === 0 ? [60] : clear;
}
