import type { ShaftDraft } from "./types.js";

/** Plain weave on two shafts and two treadles, for examples. */
export const plainDraft: ShaftDraft = {
  shafts: 2,
  threading: [[1], [2], [1], [2]],
  shedding: { kind: "tie-up", tieUp: [[1], [2]], treadling: [[1], [2]] },
  rising: true,
  warp: {},
  weft: {},
};
