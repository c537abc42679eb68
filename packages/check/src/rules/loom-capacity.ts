import { listed } from "@drawcord/base";
import { loomNeeds, type UnitDraft } from "@drawcord/units";
import type { LaidOut } from "../cloth.js";
import { withPlace } from "../words.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** So many treadles are listed; of more only the number is told. */
const MOST_LISTED = 8;

/** The ground shafts that a treadle moves. */
interface Tie {
  /** Those that it raises. */
  readonly raise: readonly number[];
  /** Those that it sinks. */
  readonly sink: readonly number[];
}

/** What the rule finds. */
export interface LoomCapacityFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "pattern shafts" | "ground shafts" | "treadles" | "lingos" | "heddles on a shaft";
  /** What each treadle does, where it is treadles that are too many, and few enough to be told one by one. */
  readonly ties?: readonly Tie[];
}

/** What the page of this rule says. */
export const loomCapacityPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the plan needs more than the loom has",
  meaning:
    "The plan uses a pattern shaft or a ground shaft beyond the last one of the loom, or more treadles, lingos or heddles on a ground shaft than it has.",
  reason:
    "It cannot be threaded or tied as it is written. A unit takes one lingo, a static unit too; a pick of the figure alone takes no treadle.",
  mend: "Thread units that are always drawn together on one shaft, choose a ground on fewer shafts or with a shorter treadling, or another loom.",
  limit:
    "What the loom has: `pattern-shafts`, `ground-shafts`, `treadles`, `lingos` and `heddles` (on each ground shaft) in `loom`. What is not named there is not looked at.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "as many shafts and treadles as there are",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { loom: { patternShafts: 2, groundShafts: 2, treadles: 2, lingos: 2 } },
      },
    ],
    fails: [
      {
        title: "a unit on pattern shaft 3, on a loom with 2",
        cloth: { ...onTabby, threading: [[1], [3]], lifts: [[1], [3]] },
        options: { loom: { patternShafts: 2 } },
      },
      {
        title: "two ground shafts on a loom with one",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { loom: { groundShafts: 1 } },
      },
      {
        title: "two treadles on a loom with one",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { loom: { treadles: 1 } },
      },
      {
        title: "three units and two lingos",
        cloth: { ...onTabby, threading: [[1], [], [1]], lifts: [[1], []] },
        options: { loom: { lingos: 2 } },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(({ limit, measured, ties, unit }: LoomCapacityFact) => {
  const treadles = ties === undefined ? "" : `: ${listed(ties.map(tieInWords))}`;
  return `the plan needs ${measured} ${unit}, and the loom has ${limit}${treadles}`;
});

/** The sentence of what it finds, under its name. */
export const loomCapacitySentence = { "loom-capacity": say };

/** A plan that asks for more than the loom has. */
export const loomCapacity: Rule<"loom-capacity", LoomCapacityFact, LaidOut> = {
  name: "loom-capacity",
  severity: "error",
  changes: ["tie"],
  mends: ["ties"],
  ofNumbers: true,
  of: planned,
  *find({ layout, options }) {
    const { loom, staticShaft } = options;
    if (loom === undefined) return;
    const needs = loomNeeds(withoutStatic(layout.draft, staticShaft));
    for (const [unit, asked, has] of [
      ["pattern shafts", needs.highestPatternShaft, loom.patternShafts],
      ["ground shafts", needs.groundShafts, loom.groundShafts],
      ["treadles", needs.treadles, loom.treadles],
      ["lingos", needs.lingos, loom.lingos],
      ["heddles on a shaft", Math.max(0, ...needs.heddles.map(({ count }) => count)), loom.heddles],
    ] as const) {
      if (has !== undefined && asked > has) {
        const few = unit === "treadles" && asked <= MOST_LISTED;
        yield { measured: asked, limit: has, unit, ...(few && { ties: tiesOf(layout.draft) }) };
      }
    }
  },
  say,
  parts: ({ unit }) => [
    ["loom", unit === "heddles on a shaft" ? "heddles" : unit.replace(" ", "-")],
    ["loom"],
  ],
};

/** What each treadle does, so that one that is unlike another by a slip is seen. */
function tiesOf({ ground }: UnitDraft): Tie[] {
  const moving = ground.steps.filter(({ raise, sink }) => raise.length + sink.length > 0);
  return [
    ...new Map(moving.map(({ raise, sink }) => [tieInWords({ raise, sink }), { raise, sink }])).values(),
  ];
}

function tieInWords({ raise, sink }: Tie): string {
  const shafts = (set: readonly number[]) => set.join(" ") || "none";
  return `raise ${shafts(raise)} sink ${shafts(sink)}`;
}

/** The draft without the shaft that only stands for static units. */
function withoutStatic(draft: UnitDraft, staticShaft: number | undefined): UnitDraft {
  if (staticShaft === undefined) return draft;
  return { ...draft, lifts: draft.lifts.map((lift) => lift.filter((shaft) => shaft !== staticShaft)) };
}
