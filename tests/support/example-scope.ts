import type { UnitDraft } from "@drawcord/units";
import { leastRecipe } from "../../packages/files/test/samples.js";
import { plain } from "../../packages/yarn/test/weaves.js";

/** What the docstring examples of a package may name besides what is exported in it and in the others. */
export function scopeOf(name: string): Readonly<Record<string, unknown>> {
  switch (name) {
    case "check":
      return { draft: smallCloth };
    case "files":
      return { text: leastRecipe };
    case "units":
      return { draft: smallDraft };
    case "yarn":
      return { plain };
    default:
      return {};
  }
}

/** Three units of two ends on two ground shafts, three rows of four picks. */
const smallDraft: UnitDraft = {
  ground: { shafts: 2, threading: [1, 2], steps: [{ raise: [1], sink: [] }] },
  unitEnds: 2,
  threading: [[1], [2], [1]],
  lifts: [[1], [2], [1, 2]],
  picksPerRow: 4,
};

/** Two units of two ends in plain weave, two rows of two picks. */
const smallCloth: UnitDraft = {
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
