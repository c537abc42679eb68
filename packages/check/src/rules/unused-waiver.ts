import { accepts } from "../waivers.js";
import { withPlace } from "../words.js";
import { onTabby } from "./examples.js";
import { anyCloth } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface UnusedWaiverFact extends Fact {
  /** The rule whose waiver matches nothing. */
  readonly waives: string;
  /** Which waiver it is, from 1. */
  readonly waiver: number;
}

/** What the page of this rule says. */
export const unusedWaiverPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a waiver that matches no finding",
  meaning:
    "The recipe accepts a finding of a rule at a place, and the rule finds nothing there that lies within it.",
  reason: "The fault was mended, or has moved: a waiver left behind may hide the next one.",
  mend: "Take the waiver out, or correct its place.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "a waiver for what is there",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [3]] },
        options: { waive: [{ rule: "unknown-shaft", rows: [2, 2], reason: "shaft 3 is for the next warp" }] },
      },
    ],
    fails: [
      {
        title: "a waiver for another row",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [3]] },
        options: { waive: [{ rule: "unknown-shaft", rows: [1, 1], reason: "shaft 3 is for the next warp" }] },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(
  ({ waives }: UnusedWaiverFact) => `the waiver of ${waives} matches no finding`,
);

/** The sentence of what it finds, under its name. */
export const unusedWaiverSentence = { "unused-waiver": say };

/** A waiver that accepts nothing. */
export const unusedWaiver: Rule<"unused-waiver", UnusedWaiverFact> = {
  name: "unused-waiver",
  severity: "note",
  changes: [],
  ofPieces: "all",
  of: anyCloth,
  *find({ options: { only, waive = [] } }, found) {
    for (const [i, waiver] of waive.entries()) {
      if (only !== undefined && !only.includes(waiver.rule)) continue;
      if (found.some((finding) => accepts(waiver, finding))) continue;
      const { ends, picks, units, rows } = waiver;
      yield {
        waives: waiver.rule,
        waiver: i + 1,
        ...(ends && { ends }),
        ...(picks && { picks }),
        ...(units && { units }),
        ...(rows && { rows }),
      };
    }
  },
  say,
  parts: ({ waiver }) => [["waive", waiver - 1], ["waive"]],
};
