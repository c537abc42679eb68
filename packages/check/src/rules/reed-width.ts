import type { Calculated } from "../cloth.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { figure, figureBeyond, withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ReedWidthFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "mm";
  /** What the warp is too wide for. */
  readonly of: "reed" | "loom";
}

/** What the page of this rule says. */
export const reedWidthPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the warp is wider than the reed or the loom",
  meaning: "The width in the reed is more than the reed is wide, or more than the loom weaves.",
  reason: "It cannot be sleyed, or cannot be woven, as it is written: there are too few dents.",
  mend: "Weave narrower, with fewer units or a closer sett, or take a wider reed or another loom.",
  limit:
    "The widths themselves: `reed-width` in `cloth` and `weaving-width` in `loom`. What is not named there is not looked at.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "10 cm in a reed of 10 cm",
        cloth: tenByTen,
        options: { loom: { reedWidth: 100 } },
        project: { sett: "4 per cm" },
      },
    ],
    fails: [
      {
        title: "10 cm in a reed of 9 cm",
        cloth: tenByTen,
        options: { loom: { reedWidth: 90 } },
        project: { sett: "4 per cm" },
      },
      {
        title: "10 cm on a loom of 9 cm",
        cloth: tenByTen,
        options: { loom: { weavingWidth: 90 } },
        project: { sett: "4 per cm" },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const reedWidthEntry = {
  name: "reed-width",
  severity: "error",
  changes: ["number", "remove-unit"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(({ limit, measured, of }: ReedWidthFact) => {
  const takes = of === "reed" ? "the reed is" : "the loom weaves";
  return `the warp is ${figureBeyond(measured, limit)} mm wide in the reed, and ${takes} ${figure(limit)} mm${of === "reed" ? " wide" : ""}`;
});

/** The sentence of what it finds, under its name. */
export const reedWidthSentence = { "reed-width": say };

/** A warp wider than the reed, or than the loom. */
export const reedWidth: Rule<"reed-width", ReedWidthFact, Calculated> = /* @__PURE__ */ (() => ({
  ...reedWidthEntry,
  of: calculated,
  *find({ options, worked: { reed, widthInReed } }) {
    const width = Math.max(reed?.width.value ?? 0, widthInReed?.value ?? 0);
    for (const [of, limit] of [
      ["reed", options.loom?.reedWidth],
      ["loom", options.loom?.weavingWidth],
    ] as const) {
      if (limit !== undefined && width > limit + 1e-6) yield { measured: width, limit, unit: "mm", of };
    }
  },
  say,
  parts: ({ of }) => [
    of === "reed" ? ["cloth", "reed-width"] : ["loom", "weaving-width"],
    [of === "reed" ? "cloth" : "loom"],
  ],
}))();
