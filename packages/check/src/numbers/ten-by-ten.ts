import type { UnitDraft } from "@drawcord/units";
import { cleanTwill } from "../rules/examples.js";

/** Ten units of four ends, ten rows of four picks, for examples of numbers. */
export const tenByTen: UnitDraft = {
  ground: cleanTwill,
  unitEnds: 4,
  threading: [[1], [], [1], [], [1], [], [1], [], [1], []],
  lifts: [[1], [], [1], [], [1], [], [1], [], [1], []],
  picksPerRow: 4,
};
