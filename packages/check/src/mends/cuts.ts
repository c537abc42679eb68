import type { UnitDraft } from "@drawcord/units";
import { applyChange, type Change } from "./change.js";
import { missingTie } from "./ties.js";

/**
 * The change to the ground after which the figure cuts: a tie that is missing, its treadling begun some steps later, as few as will do, or its
 * raise and sink exchanged, and then begun later.
 * @param accept whether a draft will do
 */
export function mendCuts(
  draft: UnitDraft,
  accept: (mended: UnitDraft) => boolean,
): readonly Change[] | undefined {
  const count = draft.ground.steps.length;
  const starts = Array.from(
    { length: count - 1 },
    (_, i): Change => ({ change: "start-ground", steps: i + 1 }),
  );
  const swap: Change = { change: "swap-ground" };
  const tie = missingTie(draft);
  const ways: readonly (readonly Change[])[] = [
    ...(tie === undefined ? [] : [[tie]]),
    ...starts.map((start) => [start]),
    [swap],
    ...starts.map((start) => [swap, start]),
  ];
  return ways.find((changes) => accept(changes.reduce(applyChange, draft)));
}
