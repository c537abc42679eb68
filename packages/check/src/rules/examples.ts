import type { UnitDraft } from "@drawcord/units";

/** A tabby that always has its say, for examples where only the plan matters. */
const tabby: UnitDraft["ground"] = {
  shafts: 2,
  threading: [1, 2],
  steps: [
    { raise: [1], sink: [2] },
    { raise: [2], sink: [1] },
  ],
};

/** Units of two ends over tabby. */
export const onTabby: Omit<UnitDraft, "threading" | "lifts"> = { ground: tabby, unitEnds: 2, picksPerRow: 2 };

/** Broken twill on 4 ends in the order that cuts clean on all sides: raise 1 2 3 4 while 4 3 2 1 is sunk. */
export const cleanTwill: UnitDraft["ground"] = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [
    { raise: [1], sink: [4] },
    { raise: [2], sink: [3] },
    { raise: [3], sink: [2] },
    { raise: [4], sink: [1] },
  ],
};
