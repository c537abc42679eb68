import { many } from "@drawcord/base";
import type { LaidOut, UnitLayout } from "../cloth.js";
import { numbersIn, whereOf } from "../runs-of.js";
import { withPlace } from "../words.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import { atUnit, GROUND } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface IdleShaftFact extends Fact {
  /** Which harness the shaft is of. */
  readonly harness: "ground" | "pattern";
  /** The shaft, from 1. */
  readonly shaft: number;
}

/** What the page of this rule says. */
export const idleShaftPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a shaft that no lift draws, or that no end hangs on",
  meaning:
    "Units hang on a pattern shaft that no lift ever draws, so that they weave ground all along; or the ground has a shaft that carries no ends.",
  reason:
    "A shaft threaded for nothing is most often a slip: a row of the lift plan is missing, or a number was written for another.",
  mend: "Draw the shaft in the rows that need it, or thread its units as static. Take a ground shaft without ends out of the plan.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "every shaft is drawn",
        cloth: {
          ...onTabby,
          threading: [[1], [], [2]],
          lifts: [[1], [2]],
        },
      },
      {
        title: "an end on each of three ground shafts",
        cloth: {
          ground: {
            shafts: 3,
            threading: [1, 2, 1, 3],
            steps: [
              { raise: [1], sink: [2, 3] },
              { raise: [2, 3], sink: [1] },
            ],
          },
          unitEnds: 2,
          threading: [[1], []],
          lifts: [[1], []],
          picksPerRow: 2,
        },
      },
    ],
    fails: [
      {
        title: "shaft 2 is threaded and never drawn",
        cloth: {
          ...onTabby,
          threading: [[1], [], [2]],
          lifts: [[1], []],
        },
      },
      {
        title: "no end on ground shaft 3",
        cloth: {
          ground: {
            shafts: 3,
            threading: [1, 2],
            steps: [
              { raise: [1], sink: [2, 3] },
              { raise: [2, 3], sink: [1] },
            ],
          },
          unitEnds: 2,
          threading: [[1]],
          lifts: [[1]],
          picksPerRow: 2,
        },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(({ harness, runs, shaft, units }: IdleShaftFact) => {
  if (harness === "ground") return `ground shaft ${shaft} carries no ends`;
  const hanging = numbersIn(runs?.units ?? (units ? [units] : [])).length;
  return `no lift draws pattern shaft ${shaft}, on which ${many(hanging, "unit")} ${hanging === 1 ? "hangs" : "hang"}`;
});

/** The sentence of what it finds, under its name. */
export const idleShaftSentence = { "idle-shaft": say };

/** A shaft that does nothing in this cloth. */
export const idleShaft: Rule<"idle-shaft", IdleShaftFact, LaidOut> = {
  name: "idle-shaft",
  severity: "warning",
  changes: ["lift", "thread", "ground-threading"],
  ofPieces: "all",
  of: planned,
  *find({ layout, options }) {
    for (const { shaft, units, rows } of layout.shafts.values()) {
      if (rows > 0 || shaft === options.staticShaft) continue;
      yield { harness: "pattern", shaft, ...whereOf("units", units) };
    }
    for (const shaft of bareGroundShafts(layout)) yield { harness: "ground", shaft };
  },
  say,
  parts: (fact) => (fact.harness === "ground" ? [["ground", "threading"], ...GROUND] : atUnit(fact)),
};

function bareGroundShafts({ draft, unitOfEnd }: UnitLayout): number[] {
  const { ground, selvedge } = draft;
  const ofUnits = unitOfEnd.reduce((count, unit) => count + (unit >= 0 ? 1 : 0), 0);
  const used = new Set([
    ...ground.threading.slice(0, ofUnits),
    ...(selvedge?.left ?? []),
    ...(selvedge?.right ?? []),
  ]);
  return Array.from({ length: ground.shafts }, (_, i) => i + 1).filter((shaft) => !used.has(shaft));
}
