import type { Cloth } from "../cloth.js";
import { unlikeSidesLimit } from "../limits/unlike-sides.js";
import { eachLongRun } from "../measure/long-runs.js";
import { longestOf } from "../measure/threads.js";
import { unitsAndRows } from "../regions.js";
import type { Span, Where } from "../report.js";
import { figure, withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import { GROUND } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface UnlikeSidesFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "threads";
  /** Threads that the longest passes on the other side. */
  readonly other: number;
  /** How many times as many are allowed. */
  readonly times: number;
  /** The side of the cloth. */
  readonly face: "face" | "back";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
}

/** What the page of this rule says. */
export const unlikeSidesPage: RulePage = {
  summary: "one side of the cloth has much longer floats than the other",
  meaning: "The longest float of a system on one side is more than so many times as long as on the other.",
  reason:
    "Damask is as sound on the back as on the face. Where it is not, the cloth wears from one side and belongs with that side down, or lined.",
  mend: "Look at the back before choosing the limit: draw the figure so that drawn and undrawn areas are alike in size, or change some squares. A satin without a figure is unlike by its nature. Drawcord proposes up to eight squares to change; more than that would be another figure, and that is yours to draw.",
  limit:
    "`unlike-sides: 4` in `limits`: how many times as long the floats of one side may be as those of the other. Usual: 2.",
  source: "common practice; the limit is Drawcord's own",
  examples: {
    passes: [{ title: "twill of one up and two down", cloth: "..#\n.#.\n#..", options: { repeat: "both" } }],
    fails: [
      {
        title: "twill of one up and three down",
        cloth: "...#\n..#.\n.#..\n#...",
        options: { repeat: "both" },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace(({ face, measured, other: fewer, system, times }: UnlikeSidesFact) => {
  const other = face === "face" ? "back" : "face";
  return `the longest ${system} float passes ${measured} threads on the ${face}, and ${figure(fewer)} on the ${other}, where ${figure(times)} times as many are allowed`;
});

/** The sentence of what it finds, under its name. */
export const unlikeSidesSentence = { "unlike-sides": say };

/** A back with much longer floats than the face, or the other way round. */
export const unlikeSides: Rule<"unlike-sides", UnlikeSidesFact> = {
  name: "unlike-sides",
  severity: "note",
  changes: ["draw", "leave"],
  mends: ["any squares"],
  of: anyCloth,
  *find(cloth) {
    const { warp, weft, options } = cloth;
    const times = options.limits?.unlikeSides ?? unlikeSidesLimit.usual;
    for (const [system, threads] of [
      ["warp", warp.threads],
      ["weft", weft.threads],
    ] as const) {
      const raised = longestOf(threads.raised);
      const lowered = longestOf(threads.lowered);
      if (Math.min(raised, lowered) <= 0 || Math.max(raised, lowered) <= times * Math.min(raised, lowered))
        continue;
      const onRaised = raised > lowered;
      const onFace = system === "warp" ? raised > lowered : lowered > raised;
      yield {
        measured: Math.max(raised, lowered),
        limit: times * Math.min(raised, lowered),
        unit: "threads",
        other: Math.min(raised, lowered),
        times,
        ...longestPlace(cloth, system, onRaised ? 1 : 0, Math.max(raised, lowered)),
        face: onFace ? "face" : "back",
        system,
      };
    }
  },
  say,
  parts: () => GROUND,
};

/** Where the first of the longest floats of a system lies. */
function longestPlace(cloth: Cloth, system: "warp" | "weft", state: 0 | 1, longest: number): Where {
  let place: Where | undefined;
  eachLongRun(
    cloth[system],
    state,
    () => (place === undefined ? longest - 1 : Number.POSITIVE_INFINITY),
    (thread, first, last) => {
      const own: Span = [thread + 1, thread + 1];
      const passed: Span = [first + 1, last + 1];
      place ??= system === "warp" ? { ends: own, picks: passed } : { ends: passed, picks: own };
    },
  );
  return place === undefined ? {} : { ...place, ...unitsAndRows(cloth, place.ends, place.picks) };
}
