import { many } from "@drawcord/base";
import type { LaidOut } from "../cloth.js";
import { picksOfRows } from "../regions.js";
import { rowsDrawing, whereOf } from "../runs-of.js";
import { withPlace } from "../words.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import { atRow } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface UnknownShaftFact extends Fact {
  /** Which harness the shaft is of. */
  readonly harness: "pattern";
  /** The shaft, from 1. */
  readonly shaft: number;
}

/** What the page of this rule says. */
export const unknownShaftPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a lift draws a shaft that no unit hangs on",
  meaning:
    "The lift plan names a pattern shaft, but the unit threading hangs no unit on it: drawing it moves nothing.",
  reason:
    "The plan means to draw units that stay down. Threading and lift plan do not belong together, or one has a slip.",
  mend: "Write the shaft that was meant, or hang its units on it in the threading.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "every shaft drawn has its units",
        cloth: {
          ...onTabby,
          threading: [[1], [2]],
          lifts: [[1], [2]],
        },
      },
    ],
    fails: [
      {
        title: "row 2 draws shaft 3",
        cloth: {
          ...onTabby,
          threading: [[1], [2]],
          lifts: [[1], [2, 3]],
        },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(
  ({ shaft, count = 1 }: UnknownShaftFact) =>
    `${count === 1 ? "a lift draws" : `${many(count, "lift")} draw`} pattern shaft ${shaft}, on which no unit hangs`,
);

/** The sentence of what it finds, under its name. */
export const unknownShaftSentence = { "unknown-shaft": say };

/** A lift that draws a pattern shaft on which no unit hangs. */
export const unknownShaft: Rule<"unknown-shaft", UnknownShaftFact, LaidOut> = {
  name: "unknown-shaft",
  severity: "error",
  changes: ["lift"],
  speaksFor: "threading",
  inVain: { hangs: "nothing" },
  of: planned,
  *find({ layout, options }) {
    for (const { shaft, units, rows, firstRow, lastRow } of layout.shafts.values()) {
      if (units.length > 0 || shaft === options.staticShaft) continue;
      yield {
        harness: "pattern",
        shaft,
        ...whereOf("rows", rowsDrawing(layout.draft.lifts, shaft)),
        picks: picksOfRows(layout, [firstRow, lastRow]),
        ...(rows > 1 && { count: rows }),
      };
    }
  },
  say,
  parts: atRow,
};
