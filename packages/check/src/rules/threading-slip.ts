import type { UnitDraft } from "@drawcord/units";
import type { LaidOut } from "../cloth.js";
import { unitEdges } from "../measure/squares.js";
import type { Span } from "../report.js";
import { findSlip, mirrorsRound, type SymmetrySlip } from "../symmetry.js";
import { onTabby } from "./examples.js";
import { planned } from "./needs.js";
import { atUnit } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ThreadingSlipFact extends Fact {
  readonly units: Span;
  /** The unit that this one would have to be like, or beside which one is missing; either may be the wrong one. */
  readonly counterpart: number;
}

/** What the page of this rule says. */
export const threadingSlipPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a threading that is one unit away from its own symmetry",
  meaning:
    "Except for one unit, the threading reads the same from the left as from the right, or repeats all along: one unit hangs on another shaft than its counterpart, or one is too many or too few.",
  reason:
    "It is the commonest slip in threading, and shows as a fault in every figure that this unit takes part in.",
  mend: "Hang the unit on the shaft of its counterpart, or add or leave out the one that is odd. Where it is meant, waive it.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "a point threading",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3], [4], [5], [4], [3], [2], [1]],
          lifts: [
            [1, 2],
            [3, 4, 5],
          ],
        },
      },
      {
        title: "a straight threading twice and a half",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3], [4], [1], [2], [3], [4], [1], [2]],
          lifts: [
            [1, 2],
            [3, 4],
          ],
        },
      },
    ],
    fails: [
      {
        title: "a point threading with a unit on shaft 4 in place of 3",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3], [4], [5], [4], [4], [2], [1]],
          lifts: [
            [1, 2],
            [3, 4, 5],
          ],
        },
      },
      {
        title: "a point threading with one unit twice",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3], [4], [5], [4], [3], [2], [2], [1]],
          lifts: [
            [1, 2],
            [3, 4, 5],
          ],
        },
      },
      {
        title: "a straight threading with a unit on shaft 2 in place of 3",
        cloth: {
          ...onTabby,
          threading: [[1], [2], [3], [4], [1], [2], [2], [4], [1], [2], [3], [4]],
          lifts: [
            [1, 2],
            [3, 4],
          ],
        },
      },
    ],
  },
}))();

/** A unit threading that is one unit away from its own symmetry. */
export const threadingSlip: Rule<"threading-slip", ThreadingSlipFact, LaidOut> = {
  name: "threading-slip",
  severity: "warning",
  changes: ["thread", "remove-unit"],
  speaksFor: "threading",
  of: planned,
  *find(cloth) {
    const slip = slipOfThreading(cloth.layout.draft);
    const repeated = cloth.options.repeat === "ends" || cloth.options.repeat === "both";
    if (slip === undefined || (repeated && mirrorsRound(keysOf(cloth.layout.draft)))) return;
    const { first, last } = unitEdges(cloth.layout);
    yield {
      units: [slip.at + 1, slip.at + 1],
      ends: [first[slip.at]! + 1, last[slip.at]! + 1],
      counterpart: slip.other + 1,
    };
  },
  say(_, cloth) {
    const slip = cloth.layout && slipOfThreading(cloth.layout.draft);
    if (slip === undefined || cloth.layout === undefined) return "";
    const { threading } = cloth.layout.draft;
    const shafts = (unit: number) => shaftsInWords(threading[unit]!);
    const unit = `unit ${slip.at + 1} ${shafts(slip.at)}`;
    if (slip.kind === "odd-one") {
      return `the threading is symmetrical except for ${unit}: it is one too many, or its counterpart beside unit ${slip.other + 1} is missing`;
    }
    const counterpart = `unit ${slip.other + 1} ${shafts(slip.other)}`;
    return slip.symmetry === "mirror"
      ? `the threading is symmetrical except for one pair: ${unit} and ${counterpart}`
      : `the threading repeats every ${slip.period} units but for one: ${unit}, where ${counterpart}`;
  },
  parts: atUnit,
};

/** The slip in the threading of a draft. */
function slipOfThreading({ threading }: UnitDraft): SymmetrySlip | undefined {
  return findSlip(keysOf({ threading }));
}

function keysOf({ threading }: Pick<UnitDraft, "threading">): string[] {
  return threading.map((shafts) => shafts.join("+"));
}

function shaftsInWords(shafts: readonly number[]): string {
  if (shafts.length === 0) return "is static";
  return `hangs on ${shafts.length === 1 ? "shaft" : "shafts"} ${shafts.join("+")}`;
}
