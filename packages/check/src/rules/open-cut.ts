import { many } from "@drawcord/base";
import type { Cloth, LaidOut } from "../cloth.js";
import { openCutsLimit } from "../limits/open-cuts.js";
import { type OpenBorder, openAcross, openSides } from "../measure/open-borders.js";
import { unitsAndRows } from "../regions.js";
import type { Span } from "../report.js";
import { figure, withPlace } from "../words.js";
import { cleanTwill } from "./examples.js";
import { planned } from "./needs.js";
import { GROUND } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface OpenCutFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "percent";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** Which edge of a drawn area the border is; the first pick is the lowest. */
  readonly side: "left" | "right" | "lower" | "upper";
}

/** What the page of this rule says. */
export const openCutPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a border of the figure that does not cut",
  meaning:
    "Where a drawn and an undrawn area meet, two neighbouring interlacements are both raised or both lowered, so that the float of one side continues into the other. Borders are reported one by one, each a straight line with the drawn area on one side of it, the one with the greatest open share first; each weft is judged within its own picks, and picks on which the ground moves every shaft are left out.",
  reason:
    "Such an edge looks ragged, and the threads slip over it in use. A cut edge, each binding point against a float, stays sharp.",
  mend: "Begin the ground at the pick where its raise plan and sink plan cut clean, make units a multiple of the ground's ends and rows a multiple of its picks, or let the sink plan mirror the raise plan. On an odd number of ends some open pairs remain: allow their share.",
  limit: "`open-cuts: 25 %` in `limits`: the share of a border that may be open. Usual: 0 %.",
  source:
    "J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, pp. 234-235; T. F. Bell, Jacquard Weaving and Designing, 1895, p. 117",
  examples: {
    passes: [
      {
        title: "a mirrored pair begun at the right pick",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[], [1], []],
          lifts: [[], [1], []],
          picksPerRow: 4,
        },
      },
      {
        title: "the same pair begun one end later, so that half of a border is open, where 50 % are allowed",
        cloth: {
          ground: { ...cleanTwill, threading: [2, 3, 4, 1] },
          unitEnds: 4,
          threading: [[], [1], []],
          lifts: [[], [1], []],
          picksPerRow: 4,
        },
        options: { limits: { openCuts: 50 } },
      },
    ],
    fails: [
      {
        title: "the same pair begun one end later",
        cloth: {
          ground: { ...cleanTwill, threading: [2, 3, 4, 1] },
          unitEnds: 4,
          threading: [[], [1], []],
          lifts: [[], [1], []],
          picksPerRow: 4,
        },
      },
      {
        title: "the same, where 49 % are allowed",
        cloth: {
          ground: { ...cleanTwill, threading: [2, 3, 4, 1] },
          unitEnds: 4,
          threading: [[], [1], []],
          lifts: [[], [1], []],
          picksPerRow: 4,
        },
        options: { limits: { openCuts: 49 } },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(({ side, measured, limit, count = 1 }: OpenCutFact) => {
  const all = Math.round((100 * count) / measured);
  const allowed = limit === 0 ? "none" : `${figure(limit)} %`;
  return `at ${count} of ${many(all, "place")} along the ${side} edge of a drawn area, ${figure(measured)} %, the float runs on; ${allowed} allowed`;
});

/** The sentence of what it finds, under its name. */
export const openCutSentence = { "open-cut": say };

/** A border of drawn and undrawn where the floats of one side can slide over the other. */
export const openCut: Rule<"open-cut", OpenCutFact, LaidOut> = {
  name: "open-cut",
  severity: "warning",
  changes: ["start-ground", "swap-ground", "tie"],
  mends: ["ground"],
  speaksFor: "ground",
  of: (cloth) => (cloth.layout === undefined ? "what is drawn is only inferred" : planned(cloth)),
  *find(cloth) {
    const { figure, options } = cloth;
    const allowed = options.limits?.openCuts ?? openCutsLimit.usual;
    const { unitOfEnd } = cloth.layout;
    for (const border of openSides(cloth, figure, allowed)) {
      // A selvedge weaves as it must to hold the edge; the border to it is no edge of the figure.
      if (border.ends.some((end) => unitOfEnd[end] === -1)) continue;
      yield factOf(cloth, border, allowed, "weft");
    }
    for (const border of openAcross(cloth, figure, allowed)) yield factOf(cloth, border, allowed, "warp");
  },
  say,
  parts: () => GROUND,
};

function factOf(cloth: Cloth, border: OpenBorder, limit: number, system: "warp" | "weft"): OpenCutFact {
  const ends: Span = [border.ends[0] + 1, border.ends[1] + 1];
  const picks: Span = [border.picks[0] + 1, border.picks[1] + 1];
  return {
    ends,
    picks,
    ...unitsAndRows(cloth, ends, picks),
    ...(border.open > 1 && { count: border.open }),
    measured: (100 * border.open) / border.pairs,
    limit,
    unit: "percent",
    system,
    side: border.side,
  };
}
