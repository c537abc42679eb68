/** A small plan that somebody composed: every part of it goes by a rule that a class can see. */

import type { UnitDraft } from "@drawcord/units";
import { smallDraft } from "./cloth.js";
import type { Dice } from "./random.js";

/** Ends of each selvedge. */
const SELVEDGE = 8;

/**
 * A small plan: a point threading between static borders, a motif that is the same from either end, four picks in each row,
 * a ground that cuts clean, and selvedges that go on with the ground's threading.
 */
export function plainPlan(dice: Dice): UnitDraft {
  const handles = dice.whole(5, 7);
  const up = Array.from({ length: handles }, (_, i) => i + 1);
  const point = [...up, ...up.slice(1, -1).toReversed()];
  const half = Array.from({ length: dice.whole(4, 5) }, (_, row, rows = dice.whole(4, 5)) => {
    const from = Math.max(1, handles - Math.round((row * (handles - 1)) / rows));
    return up.slice(from - 1, from + dice.whole(0, 2));
  });
  const draft = smallDraft({
    threading: [0, 0, ...point, ...point, 1, 0, 0],
    lifts: [[], ...half, ...half.slice(0, -1).toReversed(), []],
    size: 4,
    order: dice.one([
      [4, 3, 2, 1],
      [4, 2, 3, 1],
    ]),
  });
  const selvedge = Array.from({ length: SELVEDGE }, (_, end) => (end % 4) + 1);
  return { ...draft, selvedge: { left: selvedge, right: selvedge } };
}
