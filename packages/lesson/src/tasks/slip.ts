import { applyChange, type Change, printThreading, sayChange } from "@drawcord/units";
import { sayTask, type TaskKind } from "../task.js";

/** A threading in which one unit hangs on a wrong shaft. */
export const slipTask: TaskKind = {
  summary: "spot the slip in a threading, and mend it",
  levels: [2, 3],
  make(recipe, dice, level) {
    const shafts = dice.whole(5, 7 + 2 * level);
    const repeats = dice.whole(2, 3);
    const point = [
      ...Array.from({ length: shafts }, (_, i) => i + 1),
      ...Array.from({ length: shafts - 2 }, (_, i) => shafts - 1 - i),
    ];
    const right = [...Array.from({ length: repeats }, () => point).flat(), 1];
    const unit = dice.whole(2, right.length - 1);
    const was = right[unit - 1]!;
    // Neither its own shaft nor that of a neighbour, which a point could stand on.
    const wrongs = Array.from({ length: shafts }, (_, i) => i + 1).filter(
      (shaft) => shaft !== was && shaft !== right[unit - 2] && shaft !== right[unit],
    );
    const wrong = dice.one(wrongs);
    const mend: Change = { change: "thread", unit, shafts: [was] };
    const slipped = right.map((shaft, i) => [i === unit - 1 ? wrong : shaft]);
    const mended = applyChange({ ...recipe.draft, threading: slipped }, mend).threading;
    return {
      title: "Spot the slip",
      minutes: 8,
      points: 6,
      ask: [
        sayTask(
          `A threading runs in points from shaft 1 to shaft ${shafts} and back, ${repeats} times, and ends on shaft 1. Its writer was called away once. The units in order hang on these shafts:`,
        ),
        {
          kind: "table",
          id: "threading",
          caption: "The threading, ten units a line",
          columns: [{ title: "From unit", kind: "head" }, { title: "Shafts" }],
          rows: Array.from({ length: Math.ceil(slipped.length / 10) }, (_, line) => [
            `${line * 10 + 1}`,
            slipped
              .slice(line * 10, line * 10 + 10)
              .map(([shaft]) => shaft)
              .join("  "),
          ]),
        },
      ],
      answers: [
        { question: "Which unit is wrong?", answer: `${unit}` },
        { question: "On which shaft does it hang?", answer: `${wrong}` },
        { question: "Where should it hang?", answer: `${was}` },
        {
          question: "What tells you so?",
          answer: `${sayChange(mend)}: it then reads ${printThreading(mended)}`,
          also: ["any sentence that names the neighbours of the unit, or the mirror"],
        },
      ],
      steps: [],
      given: { shafts, slipped: slipped.map(([shaft]) => shaft!) },
      room: 0,
    };
  },
};
