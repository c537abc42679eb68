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
export interface StaticDrawnFact extends Fact {
  /** Which harness the shaft is of. */
  readonly harness: "pattern";
  /** The shaft, from 1. */
  readonly shaft: number;
}

/** What the page of this rule says. */
export const staticDrawnPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a lift draws a static unit",
  meaning:
    "Static units weave ground all along; diagrams may give them a shaft number, but there is no shaft to draw. A lift names that number all the same.",
  reason: "The figure will miss what this lift was to draw, and the rows look right on paper.",
  mend: "Leave the number out of the lift, or hang the units on a shaft of their own.",
  limit: "The number that stands for static units: `static` in `units`.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "the number of the static units is never drawn",
        cloth: {
          ...onTabby,
          threading: [[], [1], []],
          lifts: [[1], []],
        },
        options: { staticShaft: 10 },
      },
    ],
    fails: [
      {
        title: "row 2 draws the static units",
        cloth: {
          ...onTabby,
          threading: [[], [1], []],
          lifts: [[1], [1, 10]],
        },
        options: { staticShaft: 10 },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(
  ({ shaft, count = 1 }: StaticDrawnFact) =>
    `${count === 1 ? "a lift draws" : `${many(count, "lift")} draw`} shaft ${shaft}, which stands for the static units`,
);

/** The sentence of what it finds, under its name. */
export const staticDrawnSentence = { "static-drawn": say };

/** A lift that draws the shaft number that stands for static units. */
export const staticDrawn: Rule<"static-drawn", StaticDrawnFact, LaidOut> = {
  name: "static-drawn",
  severity: "error",
  changes: ["lift"],
  inVain: { hangs: "static", sure: true },
  of: planned,
  *find({ layout, options }) {
    for (const { shaft, rows, firstRow, lastRow } of layout.shafts.values()) {
      if (rows === 0 || shaft !== options.staticShaft) continue;
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
