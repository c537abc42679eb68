import type { UnitDraft } from "@drawcord/units";

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

/** What the examples of the docstrings may name besides exports. */
export const scope = { draft };
