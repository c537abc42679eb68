import { many } from "@drawcord/base";
import type { Calculated } from "../cloth.js";
import { type Amount, amountInWords, amountOf } from "../numbers/amount.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ShortWarpFact extends Fact {
  /** Pieces that the warp gives. */
  readonly measured: number;
  /** Pieces that are wanted. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "pieces";
  /** How long the warp is. */
  readonly warp: Amount;
}

/** What the page of this rule says. */
export const shortWarpPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the warp is too short for the pieces",
  meaning:
    "The recipe gives the length of the warp and the number of pieces, and the warp, less sampling and waste, gives fewer; of several designs all pieces count, in the order in which they are woven.",
  reason: "The last pieces cannot be woven, and that shows only when the warp runs out.",
  mend: "Wind a longer warp, or weave fewer or shorter pieces. Leave the warp out, and its length follows from the pieces.",
  source: "Drawcord's own",
  examples: {
    passes: [
      {
        title: "two pieces of 10 cm from a metre",
        cloth: tenByTen,
        project: { pickSett: "4 per cm", warpLength: "1 m", waste: "50 cm", pieces: 2 },
      },
    ],
    fails: [
      {
        title: "twenty pieces of 10 cm from a metre",
        cloth: tenByTen,
        project: { pickSett: "4 per cm", warpLength: "1 m", waste: "50 cm", pieces: 20 },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const shortWarpEntry = {
  name: "short-warp",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
  ofPieces: "first",
} as const;

const say = /* @__PURE__ */ withPlace(({ limit, measured, warp }: ShortWarpFact) => {
  return `the warp of ${amountInWords(warp)} gives ${many(measured, "piece")}, and ${limit} are wanted`;
});

/** The sentence of what it finds, under its name. */
export const shortWarpSentence = { "short-warp": say };

/** A warp too short for the pieces. */
export const shortWarp: Rule<"short-warp", ShortWarpFact, Calculated> = /* @__PURE__ */ (() => ({
  ...shortWarpEntry,
  of: calculated,
  *find({ piecesOfWarp, project: { warpLength } }) {
    if (piecesOfWarp === undefined || warpLength === undefined) return;
    const { given, wanted } = piecesOfWarp;
    if (given < wanted) yield { measured: given, limit: wanted, unit: "pieces", warp: amountOf(warpLength) };
  },
  say,
  parts: () => [["project", "pieces"], ["project", "warp"], ["pieces"]],
}))();
