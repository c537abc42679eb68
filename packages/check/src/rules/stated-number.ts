import type { Cloth } from "../cloth.js";
import { onTabby } from "./examples.js";
import type { Rule } from "./rule.js";

/** A number that the printed recipe claims and the cloth does not bear out. */
export const statedNumber: Rule = {
  name: "stated-number",
  severity: "warning",
  summary: "a number that the recipe states is not the cloth's",
  meaning:
    "The recipe claims a number of ends, picks, units or rows, or a longest float, and the cloth worked out from it has another.",
  reason:
    "Whoever buys yarn or winds a warp by the printed number comes out wrong; or the plan has lost or gained something since.",
  mend: "Count again: correct the number, or the threading or lift plan that was to have it.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "2 units of 2 ends are 4 ends",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { stated: { ends: 4, picks: 4, units: 2, rows: 2, longestFloat: 1 } },
      },
    ],
    fails: [
      {
        title: "6 ends stated where there are 4",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { stated: { ends: 6 } },
      },
    ],
  },
  *find(cloth) {
    const { stated = {} } = cloth.options;
    const found = numbersOf(cloth);
    for (const name of ["ends", "picks", "units", "rows", "longestFloat"] as const) {
      const claim = stated[name];
      if (claim === undefined || claim === found[name]) continue;
      yield { measured: found[name], limit: claim, unit: name === "longestFloat" ? "threads" : name };
    }
  },
  say: ({ measured, limit, unit }) =>
    unit === "threads"
      ? `the recipe states a longest float of ${limit}, and the cloth's passes ${measured}`
      : `the recipe states ${limit} ${unit}, and the cloth has ${measured}`,
};

function numbersOf({
  warp,
  weft,
  plan,
}: Cloth): Record<"ends" | "picks" | "units" | "rows" | "longestFloat", number> {
  const longest = [warp, weft].map(({ threads }) =>
    threads.longest.reduce((most, one) => Math.max(most, one), 0),
  );
  return {
    ends: warp.grid.rows,
    picks: weft.grid.rows,
    units: plan?.draft.threading.length ?? 0,
    rows: plan?.draft.lifts.length ?? 0,
    longestFloat: Math.max(...longest),
  };
}
