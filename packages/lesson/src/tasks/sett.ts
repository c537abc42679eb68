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
  levels: [1, 2, 3],
  make(_, dice, level) {
    const { ends, intersections, name } = dice.one(WEAVES);
    const wraps = dice.whole(12, 40);
    const firm = dice.one([75, 80, 85]);
    const board = boardOf();
    const closest = board.line(
      "closest sett = wraps × ends of the repeat ÷ (ends of the repeat + intersections)",
      `${wraps} × ${ends} ÷ (${ends} + ${intersections})`,
      (wraps * ends) / (ends + intersections),
      1,
      "ends in a cm",
    );
    const working = board.line(
      "sett for this cloth = closest sett × share ÷ 100",
      `${closest} × ${firm} ÷ 100`,
      (closest * firm) / 100,
      1,
      "ends in a cm",
    );
    const answers: Answer[] = [
      {
        question: "What is the closest sett?",
        answer: `${closest.toFixed(1)} ends in a cm`,
        within: "0.2 ends in a cm",
      },
      {
        question: "Which sett do you take?",
        answer: `${working.toFixed(1)} ends in a cm`,
        within: "0.5 ends in a cm",
      },
    ];
    if (level > 1) {
      const dents = dice.one([40, 50, 60, 70, 80, 100]);
      const each = Math.max(1, Math.round((working * 10) / dents));
      board.line(
        "ends in 10 cm = dents in 10 cm × ends in a dent",
        `${dents} × ${each}`,
        dents * each,
        0,
        "ends in 10 cm",
      );
      answers.push({
        question: `How many ends in a dent of a reed of ${dents} in 10 cm, the same number in each, come nearest to it?`,
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
      given: { wraps, ends, intersections, firm },
      room: 18,
    };
  },
};
