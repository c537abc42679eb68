import { eachOpenAcross, eachOpenSide } from "../measure/open-pairs.js";
import { joinFaults } from "../regions.js";
import { figure, many } from "../words.js";
import { cleanTwill } from "./examples.js";
import type { Rule } from "./rule.js";

/** A border of drawn and undrawn where the floats of one side can slide over the other. */
export const openCut: Rule = {
  name: "open-cut",
  severity: "warning",
  summary: "a border of the figure that does not cut",
  meaning:
    "Where a drawn and an undrawn area meet, two neighbouring interlacements are both raised or both lowered, so that the float of one side runs on into the other.",
  reason:
    "Such an edge looks ragged, and the threads slip over it in use. A cut edge, each binding point against a float, stays sharp.",
  mend: "Begin the ground at the pick where its pair of raise and sink cuts clean, make units a multiple of the ground's ends and rows a multiple of its picks, or let the sink plan mirror the raise plan. On an odd number of ends some open pairs remain: allow their share.",
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
  cannot: ({ plan }) => (plan === undefined ? "what is drawn is only inferred" : undefined),
  *find(cloth) {
    const { figure: drawn, wefts } = cloth;
    if (drawn === undefined) return;
    const allowed = cloth.options.limits?.openCuts ?? 0;
    const limit = { limit: allowed, unit: "percent" };
    if (drawn.side.open > 0) {
      const lastEnd = cloth.warp.grid.rows - 1;
      const regions = joinFaults(cloth, (visit) =>
        eachOpenSide(cloth, drawn, allowed, (end, pick, _other, share) =>
          visit(end, Math.min(end + 1, lastEnd), pick, pick, share),
        ),
      );
      for (const region of regions) yield { ...region, ...limit, system: "weft" };
    }
    if (drawn.across.open > 0 || wefts.length > 1) {
      const regions = joinFaults(cloth, (visit) =>
        eachOpenAcross(cloth, drawn, allowed, (end, pick, other, share) =>
          visit(end, end, pick, Math.max(other, pick), share),
        ),
      );
      for (const region of regions) yield { ...region, ...limit, system: "warp" };
    }
  },
  say({ system, measured = 0, limit = 0, count = 1 }) {
    const pairs = system === "weft" ? "ends side by side" : "picks one after the other";
    return `the figure's edge does not cut: ${many(count, "pair")} of ${pairs} ${count === 1 ? "is" : "are"} open, ${figure(measured)} % of a border at worst, where ${figure(limit)} % is allowed`;
  },
};
