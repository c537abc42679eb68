import { expand, printShafts, type UnitDraft } from "@drawcord/units";
import { squaresDrawing } from "../drawing/squares.js";
import type { Dice } from "../random.js";
import { type Answer, sayTask, type TaskKind } from "../task.js";

/** Rows of the plan that are shown, and the most handles. */
const ROWS = 7;
const HANDLES = 16;

/** The lift plan read at the loom. */
export const planTask: TaskKind = {
  summary: "read the plan: which handles are held, drawn and let go, and which ends rise in a pick",
  make({ draft }, dice) {
    const used = [...new Set(draft.lifts.flat())].sort((a, b) => a - b);
    const from = dice.whole(0, Math.max(0, used.length - HANDLES));
    const handles = used.slice(from, from + HANDLES);
    const first = telling(draft.lifts, handles, dice.whole(0, Math.max(0, draft.lifts.length - ROWS)));
    const lifts = draft.lifts
      .slice(first, first + ROWS)
      .map((lift) => lift.filter((one) => handles.includes(one)));
    const asked = Math.min(dice.whole(1, ROWS - 2), lifts.length - 1);
    const set = (one: readonly number[]) => (one.length === 0 ? "none" : printShafts(one));
    const held = lifts[asked] ?? [];
    const before = lifts[asked - 1] ?? [];
    const pulled = held.filter((handle) => !before.includes(handle));
    const released = before.filter((handle) => !held.includes(handle));
    const row = first + asked + 1;
    const answers: Answer[] = [
      { question: `Which handles are held in row ${row}?`, answer: set(held) },
      { question: `Which are drawn when row ${row} begins?`, answer: set(pulled) },
      { question: `Which are let go then?`, answer: set(released) },
      {
        question: `In which row below are most handles held?`,
        answer: `${first + 1 + lifts.findIndex((lift) => lift.length === Math.max(...lifts.map((one) => one.length)))}`,
        ...others(lifts, first),
      },
    ];
    const pick = pickOf(draft, dice, row, handles);
    if (pick !== undefined) answers.push(pick.answer);
    return {
      title: "Read the plan",
      minutes: 8,
      points: 2 * answers.length,
      ask: [
        sayTask(
          "A filled square is a handle drawn. Rows are woven from the bottom upwards. Write handles that follow each other as 3-5, ends one by one, and none where there are none.",
        ),
        {
          kind: "pictures",
          pictures: [
            {
              id: "plan",
              caption: "Some rows of the lift plan: handles under the columns, rows at the left",
              alt: lifts.map((lift, i) => `row ${first + 1 + i}: ${set(lift)}`).join("; "),
              drawing: squaresDrawing({
                columns: handles.length,
                rows: lifts.length,
                filled: (column, at) => lifts[at]!.includes(handles[column]!),
                under: (column) => `${handles[column]}`,
                left: (at) => `${first + 1 + at}`,
                cell: 3.8,
              }),
            },
          ],
        },
        ...(pick === undefined ? [] : [sayTask(pick.told)]),
      ],
      answers,
      steps: [],
      given: { first, lifts, row, ...(pick && { pick: pick.given }) },
      room: 0,
    };
  },
};

/** A first row from which something changes, from a place on. */
function telling(lifts: readonly (readonly number[])[], handles: readonly number[], from: number): number {
  const last = Math.max(0, lifts.length - ROWS);
  const unlike = (first: number) =>
    new Set(
      lifts.slice(first, first + ROWS).map((lift) => lift.filter((one) => handles.includes(one)).join(" ")),
    ).size;
  for (let step = 0; step <= last; step++) {
    const first = (from + step) % (last + 1);
    if (unlike(first) > ROWS / 2) return first;
  }
  return from;
}

/** Other rows with as many handles. */
function others(lifts: readonly (readonly number[])[], first: number): { readonly also?: readonly string[] } {
  const most = Math.max(...lifts.map((lift) => lift.length));
  const rows = lifts.flatMap((lift, i) => (lift.length === most ? [`${first + 1 + i}`] : []));
  return rows.length > 1 ? { also: rows.slice(1) } : {};
}

/** One pick of a row, and the ends of a unit in it; nothing where no unit hangs on one of the handles alone. */
function pickOf(draft: UnitDraft, dice: Dice, row: number, handles: readonly number[]) {
  const hung = draft.threading.flatMap((shafts, unit) =>
    shafts.length === 1 && handles.includes(shafts[0]!) ? [unit] : [],
  );
  if (hung.length === 0) return undefined;
  const { drawdown, rowOfPick, shaftOfEnd, stepOfPick, unitOfEnd } = expand(draft);
  const unit = dice.one(hung);
  const picks = [...rowOfPick.keys()].filter((pick) => rowOfPick[pick] === row - 1);
  const pick = dice.one(picks);
  const ends = [...unitOfEnd.keys()].filter((end) => unitOfEnd[end] === unit);
  const { raise, sink } = draft.ground.steps[stepOfPick[pick]!]!;
  const risen = ends.filter((end) => drawdown.get(pick, end)).map((end) => `${end + 1}`);
  const set = (shafts: readonly number[]) =>
    shafts.length === 0 ? "no shaft" : `${shafts.length === 1 ? "shaft" : "shafts"} ${printShafts(shafts)}`;
  const [handle] = draft.threading[unit]!;
  const shafts = ends.map((end) => shaftOfEnd[end]!);
  const told = `Pick ${pick + 1} is one of row ${row}. Its treadle raises ${set(raise)} and sinks ${set(sink)}. Ends ${ends[0]! + 1} to ${ends.at(-1)! + 1} are unit ${unit + 1}, on ground shafts ${shafts.join(" ")}; the unit hangs on handle ${handle}.`;
  const answer: Answer = {
    question: `Which of ends ${ends[0]! + 1} to ${ends.at(-1)! + 1} rise in pick ${pick + 1}?`,
    answer: risen.join(" ") || "none",
  };
  return { told, answer, given: { handle, shafts, firstEnd: ends[0]! + 1, raise, sink } };
}
