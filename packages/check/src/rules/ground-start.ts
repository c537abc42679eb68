import { listed } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import type { LaidOut } from "../cloth.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import type { GroundStartOption } from "../options.js";
import type { GroundBegin, GroundStart } from "../put-together.js";
import { withPlace } from "../words.js";
import { planned } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface GroundStartFact extends Fact, GroundStart {
  /** The picks that every row is taken to be a multiple of. */
  readonly measured: number;
  /** The picks that most rows have. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "picks";
}

const begunAnew: GroundStartOption = {
  weave: "broken twill 1/7",
  step: 2,
  usual: 4,
  rowPicks: [4, 6],
  begins: { raise: [7], sink: [2] },
  wouldBegin: { raise: [1], sink: [8] },
};

/** What the page of this rule says. */
export const groundStartPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a named ground is begun otherwise, because not all rows have the same picks",
  meaning:
    "A ground that is given by its name is begun where it cuts clean at the end of every row. Where more than a few rows have another number of picks than the rest, it is begun for the greatest number of picks that all of them are a multiple of, and that moves its first pick.",
  reason:
    "A row added or a number of picks changed moves the ground under the whole cloth, which is easily taken for a slip of the treadles.",
  mend: "Give all rows the same number of picks, or give the ground step by step under `steps`, which stays as it is written.",
  source: "Drawcord's own",
  examples: {
    passes: [{ title: "rows of 4 picks throughout", cloth: tenByTen }],
    fails: [
      {
        title: "rows of 4 and of 6 picks, so that the ground is begun for steps of 2",
        cloth: tenByTen,
        options: { groundStart: begunAnew },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(
  ({ begins, limit, measured, rowPicks, weave, wouldBegin }: GroundStartFact) =>
    `rows have ${listed(
      rowPicks.map((count) => `${count}`),
      "and",
    )} picks, so the ground "${weave}" is begun for steps of ${measured}: with ${move(begins)}; were all rows of ${limit} picks, with ${move(wouldBegin)}`,
);

/** The sentence of what it finds, under its name. */
export const groundStartSentence = { "ground-start": say };

/** A named ground whose first pick is moved by rows of another number of picks. */
export const groundStart: Rule<"ground-start", GroundStartFact, LaidOut> = {
  name: "ground-start",
  severity: "note",
  changes: ["row-picks", "start-ground"],
  ofNumbers: true,
  ofPieces: "first",
  of: planned,
  *find({ options }) {
    if (options.groundStart === undefined) return;
    const { step, usual, ...start } = options.groundStart;
    yield { ...start, measured: step, limit: usual, unit: "picks" };
  },
  say,
  parts: () => [["ground", "weave"], ["ground"]],
};

function move({ raise, sink }: GroundBegin): string {
  const shafts = (set: ShaftSet) => (set.length === 0 ? "none" : set.join(" "));
  return `shafts ${shafts(raise)} raised and ${shafts(sink)} sunk`;
}
