import type { UnitDraft } from "../src/index.js";

/** Three units of two ends on two ground shafts, three rows of four picks. */
const draft: UnitDraft = {
  ground: { shafts: 2, threading: [1, 2], steps: [{ raise: [1], sink: [] }] },
  unitEnds: 2,
  threading: [[1], [2], [1]],
  lifts: [[1], [2], [1, 2]],
  picksPerRow: 4,
};

/** What the examples of the docstrings may name besides exports. */
export const scope = { draft };
