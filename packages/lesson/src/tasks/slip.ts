import type { Cause } from "@drawcord/causes";
import type { Block } from "@drawcord/page";
import { commonSize, picksOfEachRow, printShafts, sayChange, type UnitDraft } from "@drawcord/units";
import { squaresDrawing } from "../drawing/squares.js";
import { plantedPlan } from "../planted.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

/** A small recipe with slips in it, anywhere. */
export const slipTask: TaskKind = {
  summary: "spot one to three slips in a small recipe: threading, lifts, ties, start, selvedge or picks",
  make(_, dice, level) {
    const { causes, slipped, sound } = plantedPlan(dice, level);
    const answers = causes.flatMap((cause, i) => answersOf(cause, level === 1 ? "" : `Slip ${i + 1}: `));
    return {
      title: level === 1 ? "Spot the slip" : "Spot the slips",
      minutes: 8 + 4 * level,
      points: 6 * level,
      ask: [
        sayTask(
          `The rules of this small recipe are plain: units in points, lifts the same from either end, every row held alike, each treadle raises one shaft and sinks one so that the cuts are clean, selvedges that go on as the ground is threaded. Its writer was called away ${["once", "twice", "three times"][level - 1]}. ${level === 1 ? "Find the slip" : `Find the ${level === 2 ? "two" : "three"} slips, in any order`}.`,
        ),
        recipeTable(slipped),
        chart(slipped),
      ],
      answers,
      steps: [],
      given: { sound, slipped, changes: causes.map(({ changes }) => changes) },
      room: 0,
    };
  },
};

function answersOf({ changes, message, rivals, why }: Cause, which: string): readonly Answer[] {
  const mend = changes.map((change) => sayChange(change)).join(", and ");
  const also = rivals.map((rival) => rival.map((change) => sayChange(change)).join(", and "));
  const what = which === "" ? "What" : "what";
  return [
    {
      question: `${which}${what} is written wrong, and how do you mend it?`,
      answer: `${message}; ${mend}`,
      own: true,
      ...(also.length > 0 ? { also } : {}),
    },
    { question: `${which}${what} tells you so?`, answer: why, own: true },
  ];
}

/** All of the recipe but its lifts. */
function recipeTable({ ground, lifts, picksPerRow, selvedge, threading, unitEnds }: UnitDraft): Block {
  const units = threading.map((shafts) => (shafts.length === 0 ? "X" : printShafts(shafts)));
  const treadles = ground.steps.map(
    ({ raise, sink }) =>
      `${raise.length === 0 ? "none" : printShafts(raise)} up, ${sink.length === 0 ? "none" : printShafts(sink)} down`,
  );
  const held = picksOfEachRow({ lifts, picksPerRow });
  return {
    kind: "table",
    id: "recipe",
    caption: `The recipe: ${commonSize(unitEnds) ?? String(unitEnds)} ends a unit, threaded ${ground.threading.join(" ")}`,
    columns: [{ title: "What", kind: "head" }, { title: "As it is written" }],
    rows: [
      ["Handle of each unit (X: none), from unit 1", units.join("  ")],
      ["Treadles 1 to 4, pressed in turn", treadles.join(";  ")],
      ["Picks of each row, from row 1", held.join("  ")],
      ["Left selvedge, ground shafts", selvedge?.left?.join("  ") ?? ""],
      ["Right selvedge, ground shafts", selvedge?.right?.join("  ") ?? ""],
    ],
  };
}

function chart({ lifts, threading }: UnitDraft): Block {
  const handles = Math.max(...threading.flat(), ...lifts.flat());
  return {
    kind: "pictures",
    pictures: [
      {
        id: "lifts",
        caption: "Its lifts: handles under the columns, rows at the left",
        alt: lifts.map((lift, row) => `row ${row + 1}: ${lift.join(" ") || "none"}`).join("; "),
        drawing: squaresDrawing({
          columns: handles,
          rows: lifts.length,
          filled: (column, row) => lifts[row]!.includes(column + 1),
          under: (column) => `${column + 1}`,
          left: (row) => `${row + 1}`,
          cell: 3.3,
        }),
      },
    ],
  };
}
