import { many } from "@drawcord/base";
import type { Cloth, LaidOut } from "../cloth.js";
import { eachRun } from "../measure/runs.js";
import { rowEdges, unitEdges } from "../measure/squares.js";
import {
  type AllowedLength,
  allowedLength,
  lengthInWords,
  limitInWords,
  type MeasuredLength,
  measuredLength,
} from "../measured-length.js";
import { joinFaults, type VisitFault } from "../regions.js";
import { withPlace } from "../words.js";
import { cleanTwill } from "./examples.js";
import { NO_LIMIT, planned } from "./needs.js";
import { inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface LongStretchFact extends Omit<Fact, "measured">, MeasuredLength {
  /** Whether the units stay drawn, or undrawn. */
  readonly drawn: boolean;
}

/** What the page of this rule says. */
export const longStretchPage: RulePage = {
  summary: "a unit drawn or undrawn for too long a stretch of cloth",
  meaning:
    "The unit weaves the same side of the figure for longer than the limit. Static units are left out: they are meant to weave ground all along.",
  reason:
    "Warp-faced and weft-faced cloth take up a little differently. Over a long stretch that adds up: the lingo of one unit sinks below its neighbours', and its ends no longer lie in the shed.",
  mend: "Break the stretch with a row in which the unit changes, or scatter a small figure over the plain part. Drawcord proposes up to eight squares to change; more than that would be another figure, and that is yours to draw.",
  limit:
    "`stretch: 200` (picks) or `stretch: 20 cm` in `limits`. There is no usual one, and without it the rule does not look: it depends on how far a lingo may sink and on how differently the two weaves take up, and a border may well be drawn from end to end. Threads that take up by different amounts are reported by `uneven-take-up` in any case.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "drawn for 12 picks where 12 are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [2]],
          lifts: [[1], [1], [1], [2], [1]],
          picksPerRow: 4,
        },
        options: { limits: { stretch: { picks: 12 } } },
      },
      {
        title: "drawn for 12 picks at 20 a cm where 6 mm are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [2]],
          lifts: [[1], [1], [1], [2], [1]],
          picksPerRow: 4,
        },
        options: { limits: { stretch: { mm: 6 } }, sett: { picksPerCm: 20 } },
      },
    ],
    fails: [
      {
        title: "drawn for 13 picks where 12 are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [2]],
          lifts: [[1], [1], [1], [2], [1]],
          picksPerRow: [4, 4, 5, 4, 4],
        },
        options: { limits: { stretch: { picks: 12 } } },
      },
      {
        title: "drawn for 12 picks at 19 a cm where 6 mm are allowed",
        cloth: {
          ground: cleanTwill,
          unitEnds: 4,
          threading: [[1], [2]],
          lifts: [[1], [1], [1], [2], [1]],
          picksPerRow: 4,
        },
        options: { limits: { stretch: { mm: 6 } }, sett: { picksPerCm: 19 } },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace((fact: LongStretchFact) => {
  const { count = 1, drawn } = fact;
  const state = drawn ? "drawn" : "undrawn";
  const units = count === 1 ? "a unit stays" : `${many(count, "stretch", "stretches")} of units that stay`;
  return `${units} ${state} for ${count === 1 ? "" : "up to "}${lengthInWords(fact, "pick")}, ${limitInWords(fact, "pick")}`;
});

/** The sentence of what it finds, under its name. */
export const longStretchSentence = { "long-stretch": say };

/** A unit that stays drawn, or undrawn, for too long a stretch of cloth. */
export const longStretch: Rule<"long-stretch", LongStretchFact, LaidOut> = {
  name: "long-stretch",
  severity: "warning",
  changes: ["draw", "leave"],
  mends: ["squares"],
  of: (cloth) => {
    const on = planned(cloth);
    return typeof on !== "string" && cloth.options.limits?.stretch === undefined ? NO_LIMIT : on;
  },
  *find(cloth) {
    const allowed = allowedStretch(cloth);
    for (const drawn of [true, false]) {
      const regions = joinFaults(cloth, (visit) => eachStretch(cloth, drawn, allowed.threads, visit));
      for (const region of regions) {
        yield { ...region, ...measuredLength(region.measured, allowed), drawn };
      }
    }
  },
  say,
  parts: inFigure,
};

function allowedStretch({ options }: Cloth): AllowedLength {
  const { picks: threads, mm } = options.limits?.stretch ?? {};
  return allowedLength(options, "pick", { threads, mm });
}

function eachStretch(
  { layout, figure, warp: { joined } }: LaidOut,
  drawn: boolean,
  allowed: number,
  visit: VisitFault,
): void {
  const units = unitEdges(layout);
  const rows = rowEdges(layout);
  layout.draft.threading.forEach((shafts, unit) => {
    if (shafts.length === 0) return;
    const height = layout.draft.lifts.length;
    const seam = joined && figure.columns.get(unit, 0) === figure.columns.get(unit, height - 1);
    let beyond = 0;
    eachRun(figure.columns, unit, (start, end, state) => {
      const first = rows.first[start]!;
      const last = rows.last[end - 1]!;
      // What goes on over the seam of a repeat is told where it begins, as far as the seam.
      if (seam && start === 0 && end < height) {
        beyond = last + 1 - first;
        return;
      }
      const picks = last + 1 - first + (end === height ? beyond : 0);
      if ((state === 1) === drawn && picks > allowed)
        visit(units.first[unit]!, units.last[unit]!, first, last, picks);
    });
  });
}
