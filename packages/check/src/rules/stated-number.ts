import type { Cloth } from "../cloth.js";
import { longestOf } from "../measure/threads.js";
import { likelyMistake, slipsOfUnits } from "../numbers/likely-mistake.js";
import { because, type Mistake } from "../numbers/mistake.js";
import type { StatedNumber } from "../options.js";
import { withPlace } from "../words.js";
import { onTabby } from "./examples.js";
import { anyCloth } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface StatedNumberFact extends Fact {
  /** What is worked out. */
  readonly measured: number;
  /** What is stated. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: string;
  /** The stated number, by its name in the recipe. */
  readonly stated: string;
  /** The line of the recipe that states it, from 1; left out where it was read from none. */
  readonly line?: number;
  /** The mistake that would explain it exactly. */
  readonly likely?: Mistake;
}

/** What the page of this rule says. */
export const statedNumberPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a stated number that differs from the one worked out",
  meaning:
    "The recipe claims a number, such as its ends, its width in the reed or its warp yarn, and the number worked out from its plan is different. A claim may be off by as much as it was rounded where it was printed.",
  reason:
    "Whoever buys yarn or winds a warp by the printed number comes out wrong; or the plan has lost or gained something since.",
  mend: "Count again: correct the number, or the part of the plan that has lost or gained something. `drawcord plan --explain` shows how the numbers of the project are found.",
  limit: "The numbers in `stated`, such as `stated: { ends: 324 }`.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "2 units of 2 ends are 4 ends",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: {
          stated: [
            { name: "ends", claim: 4, unit: "ends" },
            { name: "longest-float", claim: 1, unit: "threads" },
          ],
        },
      },
      {
        title: "13.2 in is stated for 13.15 in, and may be off by 0.05 in as it was rounded",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: {
          stated: [{ name: "width-in-reed", claim: 13.2, unit: "in", found: 13.15, within: 0.05 }],
        },
      },
    ],
    fails: [
      {
        title: "5 ends stated where there are 4",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: { stated: [{ name: "ends", claim: 5, unit: "ends", line: 12 }] },
      },
      {
        title: "14.14 in stated for a width of 14.08 in",
        cloth: { ...onTabby, threading: [[1], [2]], lifts: [[1], [2]] },
        options: {
          stated: [{ name: "width-in-reed", claim: 14.14, unit: "in", found: 14.08, within: 0.05 }],
        },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(sentence);

/** The sentence of what it finds, under its name. */
export const statedNumberSentence = { "stated-number": say };

/** A number that the printed recipe claims and that comes out otherwise. */
export const statedNumber: Rule<"stated-number", StatedNumberFact> = {
  name: "stated-number",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
  ofPieces: "first",
  of: anyCloth,
  *find(cloth) {
    for (const { claim, found, line, name, slips = [], unit, within = 0 } of cloth.options.stated ?? []) {
      const measured = found ?? numberOf(cloth, name);
      // A claim of just the allowed rounding passes, whatever the last binary digit says.
      if (measured === undefined || Math.abs(measured - claim) <= within + 1e-9 * Math.abs(claim)) continue;
      const likely = likelyMistake(claim, [...slips, ...slipsOfUnits(measured)], within);
      yield {
        measured,
        limit: claim,
        unit,
        stated: name,
        ...(line !== undefined && { line }),
        ...(likely !== undefined && { likely }),
      };
    }
  },
  say,
  parts: ({ stated }) => [["stated", stated], ["stated"]],
};

function sentence({ likely, limit, line, measured, stated, unit }: StatedNumberFact): string {
  const who = line === undefined ? "the recipe states" : `line ${line} states`;
  const off = figure(Math.abs(measured - limit));
  if (unit === stated) {
    return `${who} ${limit} ${unit}, and there are ${figure(measured)}, ${off} ${measured < limit ? "fewer" : "more"}${because(likely)}`;
  }
  const than = measured < limit ? "less" : "more";
  const as = stated === "width-in-reed" ? "in the reed" : `as its ${stated.replaceAll("-", " ")}`;
  return `${who} ${limit} ${unit} ${as}; worked out, ${figure(measured)} ${unit}, ${off} ${unit} ${than}${because(likely)}`;
}

/** As close as a weaver measures. */
function figure(value: number): number {
  return Number(value.toFixed(2));
}

/** What the cloth has of a stated number; undefined for what it cannot tell. */
function numberOf({ layout, warp, weft }: Cloth, name: StatedNumber["name"]): number | undefined {
  switch (name) {
    case "ends":
      return warp.count;
    case "picks":
      return weft.count;
    case "units":
      return layout?.draft.threading.length;
    case "rows":
      return layout?.draft.lifts.length;
    case "longest-float":
      return Math.max(
        ...[warp, weft].flatMap(({ threads: { raised, lowered } }) => [
          longestOf(raised),
          longestOf(lowered),
        ]),
        0,
      );
    default:
      return undefined;
  }
}
