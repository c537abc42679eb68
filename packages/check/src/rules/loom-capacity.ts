import type { Plan } from "../cloth.js";
import { onTabby } from "./examples.js";
import type { Rule } from "./rule.js";

/** A plan that asks for more than the loom has. */
export const loomCapacity: Rule = {
  name: "loom-capacity",
  severity: "error",
  summary: "the loom has not what the plan asks for",
  meaning:
    "The plan uses a pattern shaft or a ground shaft beyond the last one of the loom, or more treadles than it has.",
  reason: "It cannot be threaded or tied as it is written.",
  mend: "Thread alike units on one shaft, choose a ground on fewer shafts or with a shorter treadling, or another loom.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "as many shafts and treadles as there are",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { loom: { patternShafts: 2, groundShafts: 2, treadles: 2 } },
      },
    ],
    fails: [
      {
        title: "a unit on pattern shaft 3 of 2",
        cloth: { ...onTabby, threading: [[1], [3]], lifts: [[1], [3]] },
        options: { loom: { patternShafts: 2 } },
      },
      {
        title: "two treadles of one",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { loom: { treadles: 1 } },
      },
    ],
  },
  cannot: ({ plan }) => (plan === undefined ? "a drawdown alone asks for no shafts" : undefined),
  *find({ plan, options }) {
    if (plan === undefined) return;
    const asked = needs(plan, options.staticShaft);
    const { loom = {} } = options;
    for (const [part, has] of [
      ["pattern shafts", loom.patternShafts],
      ["ground shafts", loom.groundShafts],
      ["treadles", loom.treadles],
    ] as const) {
      if (has !== undefined && asked[part] > has) yield { measured: asked[part], limit: has, unit: part };
    }
  },
  say: ({ measured, limit, unit }) => `the plan asks for ${measured} ${unit}, and the loom has ${limit}`,
};

/** What a plan needs: its highest shafts, and a treadle for each different step of the ground. */
function needs(
  { draft, shafts: uses }: Plan,
  staticShaft: number | undefined,
): Record<"pattern shafts" | "ground shafts" | "treadles", number> {
  const used = uses.filter(({ shaft }) => shaft !== staticShaft);
  const { shafts, steps } = draft.ground;
  const different = new Set(steps.map(({ raise, sink }) => `${raise.join(" ")} / ${sink.join(" ")}`));
  return {
    "pattern shafts": used.at(-1)?.shaft ?? 0,
    "ground shafts": shafts,
    treadles: different.size,
  };
}
