import { accepts } from "../waivers.js";
import { onTabby } from "./examples.js";
import type { Rule } from "./rule.js";

/** A waiver that accepts nothing. */
export const unusedWaiver: Rule = {
  name: "unused-waiver",
  severity: "note",
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
  *find({ options: { only, waive = [] } }, found) {
    for (const waiver of waive) {
      if (only !== undefined && !only.includes(waiver.rule)) continue;
      if (found.some((finding) => accepts(waiver, finding))) continue;
      const { ends, picks, units, rows } = waiver;
      yield {
        waives: waiver.rule,
        ...(ends && { ends }),
        ...(picks && { picks }),
        ...(units && { units }),
        ...(rows && { rows }),
      };
    }
  },
  say: ({ waives }) => `the waiver of ${waives} matches no finding`,
};
