import type { Calculated } from "../cloth.js";
import { openSettLimit } from "../limits/open-sett.js";
import { inOtherUnit } from "../numbers/other-unit.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { figure, withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface OpenSettFact extends Fact {
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

/** From this share of its closest sett on, one system covers the other: the cloth is faced with it (Drawcord's own). */
const FACED = 85;

const cotton = { yarn: "20/2 Ne", fibre: "cotton" };

/** What the page of this rule says. */
export const openSettPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "ends or picks set too openly to hold",
  meaning:
    "The ends, or the picks of the ground weft, lie further apart than half of the closest sett of their yarn in the ground weave. Where the other system lies so close that the cloth is faced with it, as in a rag rug or a tapestry weave, an open sett is right and not reported.",
  reason: "The threads slip out of place, and the cloth is flimsy and does not keep its shape.",
  mend: "Choose a closer sett or a thicker yarn, or look whether ends an inch were written for ends a cm. For a veil, set the limit lower.",
  limit: "`open-sett: 30 %` in `limits`: the least share of the closest sett that is allowed. Usual: 50 %.",
  source: "common practice, around a working sett of 80 %; the limit is Drawcord's own",
  examples: {
    passes: [
      {
        title: "cotton 20/2 at 14 a cm, where 21.7 is the closest",
        cloth: tenByTen,
        project: { sett: "14 per cm", warp: cotton },
      },
      {
        title: "a veil at 7 a cm, where 30 % is enough",
        cloth: tenByTen,
        options: { limits: { openSett: 30 } },
        project: { sett: "7 per cm", warp: cotton },
      },
      {
        title: "a rug whose thick weft covers its open warp",
        cloth: tenByTen,
        project: {
          sett: "4 per cm",
          pickSett: "5 per cm",
          warp: cotton,
          wefts: [{ name: "weft", yarn: "2000 tex" }],
        },
      },
    ],
    fails: [
      {
        title: "cotton 20/2 at 6 a cm",
        cloth: tenByTen,
        project: { sett: "6 per cm", warp: cotton },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const openSettEntry = {
  name: "open-sett",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(({ limit, measured, perCm, system }: OpenSettFact) => {
  const threads = system === "warp" ? "ends" : "picks";
  return `the sett of ${figure(perCm)} ${threads} a cm is ${figure(measured)} % of the closest that the yarn allows in the ground weave, where ${figure(limit)} % is the least that holds${inOtherUnit(measured)}`;
});

/** The sentence of what it finds, under its name. */
export const openSettSentence = { "open-sett": say };

/** A sett too open to hold. */
export const openSett: Rule<"open-sett", OpenSettFact, Calculated> = /* @__PURE__ */ (() => ({
  ...openSettEntry,
  of: calculated,
  *find({ closeness, options }) {
    const limit = options.limits?.openSett ?? openSettLimit.usual;
    const { warp, weft } = closeness;
    for (const [system, own, other] of [
      ["warp", warp, weft],
      ["weft", weft, warp],
    ] as const) {
      if (own === undefined || own.share >= limit - 1e-9) continue;
      if (other !== undefined && other.share >= FACED) continue;
      yield { measured: own.share, limit, unit: "percent", system, perCm: own.perCm };
    }
  },
  say,
  parts: ({ system }) => [["cloth", system === "warp" ? "sett" : "picks"], ["cloth"]],
}))();
