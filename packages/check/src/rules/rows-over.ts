import { many } from "@drawcord/base";
import type { LaidOut } from "../cloth.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import type { WovenOrder } from "../put-together.js";
import { figure, withPlace } from "../words.js";
import { planned } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface RowsOverFact extends Fact {
  /** Rows that are over. */
  readonly measured: number;
  /** Rows of the lift plan as it is woven. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "rows";
  /** Picks that they would be, in the mean of all rows. */
  readonly picksOver: number;
  /** How long that is on the loom, in mm; left out where the picks a cm are not known. */
  readonly long?: number;
}

/** What the page of this rule says. */
export const rowsOverPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "whole repeats do not fill the length of the piece",
  meaning:
    "A block fills the piece to its length (`*fill`) as often as it goes in whole. The length would have room for some rows more, and the piece comes out shorter by as much.",
  reason:
    "A motif cut short looks like a mistake, so no part of one is woven; but the length that is planned for and the length that is woven are then not the same.",
  mend: "Weave the rows that are left over as ground, half before the figure and half after it, or make a block beside it longer; or give the piece the length that the rows make.",
  source: "common practice",
  examples: {
    passes: [{ title: "a block that fills its piece", cloth: tenByTen, options: { woven: wovenWith(0) } }],
    fails: [{ title: "two rows left over", cloth: tenByTen, options: { woven: wovenWith(2) } }],
  },
}))();

const say = /* @__PURE__ */ withPlace(({ long, measured, picksOver }: RowsOverFact) => {
  const onLoom = long === undefined ? "" : ` (${figure(long)} mm on the loom)`;
  return `whole repeats leave ${many(measured, "row")} of the piece's length over, ${many(picksOver, "pick")}${onLoom}`;
});

/** The sentence of what it finds, under its name. */
export const rowsOverSentence = { "rows-over": say };

/** A length that whole repeats of the block that fills it do not meet. */
export const rowsOver: Rule<"rows-over", RowsOverFact, LaidOut> = {
  name: "rows-over",
  severity: "note",
  changes: ["number", "insert-row"],
  of: planned,
  *find({ options, layout, weft }) {
    const over = options.woven?.over ?? 0;
    if (over <= 0) return;
    const rows = layout.draft.lifts.length;
    const picks = (over * weft.count) / rows;
    const { picksPerCm } = options.sett ?? {};
    yield {
      measured: over,
      limit: rows,
      unit: "rows",
      picksOver: Math.round(picks),
      ...(picksPerCm !== undefined && { long: (picks * 10) / picksPerCm }),
    };
  },
  say,
  parts: () => [{ piece: ["lifts", "order"] }, { piece: ["lifts"] }],
};

/** For the examples. */
function wovenWith(over: number): WovenOrder {
  return { order: [{ block: "moth", changes: [] }], blocks: { moth: [[1]] }, over };
}
