import type { UnitDraft } from "@drawcord/units";
import type { ShaftDraft } from "../src/index.js";

/** Two units of two ends in plain weave, two rows of two picks. */
const draft: UnitDraft = {
  ground: {
    shafts: 2,
    threading: [1, 2],
    steps: [
      { raise: [1], sink: [2] },
      { raise: [2], sink: [1] },
    ],
  },
  unitEnds: 2,
  threading: [[1], [2]],
  lifts: [[1], [2]],
  picksPerRow: 2,
};

/** The cloth of the draft on two shafts, by treadles. */
const shaftDraft: ShaftDraft = {
  shafts: 2,
  threading: [[1], [2], [1], [2]],
  shedding: { kind: "tie-up", tieUp: [[1], [2]], treadling: [[2], [1], [2], [1]] },
  rising: true,
  warp: {},
  weft: {},
};

/** What the examples of the docstrings may name besides exports. */
export const scope = { draft, shaftDraft };
