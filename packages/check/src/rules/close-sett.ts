import type { Calculated } from "../cloth.js";
import { closeSettLimit } from "../limits/close-sett.js";
import { openSettLimit } from "../limits/open-sett.js";
import type { Closeness } from "../numbers/closeness.js";
import { inOtherUnit } from "../numbers/other-unit.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { figure, withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface CloseSettFact extends Fact {
  /** Share of the closest sett, in percent. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "percent";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** How many of them lie in a cm. */
  readonly perCm: number;
}

const cotton = { yarn: "20/2 Ne", fibre: "cotton" };

/** What the page of this rule says. */
export const closeSettPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "ends or picks set closer than will beat in",
  meaning:
    "The ends, or the picks of the ground weft, lie closer than the closest sett of their yarn in the ground weave, by the root rule. Where the other system is set so openly that the cloth is faced with this one, as in a rep or a tapestry weave, its threads may lie side by side.",
  reason: "The weft will not beat in, or the ends stick in the shed and fray in the reed.",
  mend: "Choose a more open sett or a finer yarn, or look whether ends were written for inches or a count in another system.",
  limit: "`close-sett: 110 %` in `limits`: the share of the closest sett that is allowed. Usual: 100 %.",
  source: "J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, p. 338; the limit is Drawcord's own",
  examples: {
    passes: [
      {
        title: "cotton 20/2 at 18 a cm, where 21.7 is the closest",
        cloth: tenByTen,
        project: { sett: "18 per cm", warp: cotton },
      },
    ],
    fails: [
      {
        title: "cotton 20/2 at 30 a cm",
        cloth: tenByTen,
        project: { sett: "30 per cm", warp: cotton },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const closeSettEntry = {
  name: "close-sett",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(({ limit, measured, perCm, system }: CloseSettFact) => {
  const threads = system === "warp" ? "ends" : "picks";
  return `the sett of ${figure(perCm)} ${threads} a cm is ${figure(measured)} % of the closest that the yarn allows in the ground weave, where ${figure(limit)} % is allowed${inOtherUnit(measured)}`;
});

/** The sentence of what it finds, under its name. */
export const closeSettSentence = { "close-sett": say };

/** A sett closer than the yarn allows. */
export const closeSett: Rule<"close-sett", CloseSettFact, Calculated> = /* @__PURE__ */ (() => ({
  ...closeSettEntry,
  of: calculated,
  *find({ closeness, options }) {
    const limit = options.limits?.closeSett ?? closeSettLimit.usual;
    const open = options.limits?.openSett ?? openSettLimit.usual;
    const { warp, weft } = closeness;
    for (const [system, own, other] of [
      ["warp", warp, weft],
      ["weft", weft, warp],
    ] as const) {
      if (own === undefined) continue;
      const allowed = other !== undefined && other.share < open ? faced(own, limit) : limit;
      if (own.share > allowed + 1e-9)
        yield { measured: own.share, limit: allowed, unit: "percent", system, perCm: own.perCm };
    }
  },
  say,
  parts: ({ system }) => [["cloth", system === "warp" ? "sett" : "picks"], ["cloth"]],
}))();

/** What is allowed where the cloth is faced with these threads: side by side. */
function faced({ closest, sideBySide }: Closeness, limit: number): number {
  return (limit * sideBySide) / closest;
}
