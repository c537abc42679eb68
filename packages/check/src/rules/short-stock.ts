import type { Project, Quantity } from "@drawcord/yarn";
import type { Calculated } from "../cloth.js";
import { amountInWords } from "../numbers/amount.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ShortStockFact extends Fact {
  /** What there is. */
  readonly measured: number;
  /** What is needed. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: Quantity["unit"];
  /** The yarn, by its name in the recipe. */
  readonly yarn: string;
}

const cotton = { yarn: "20/2 Ne", fibre: "cotton" };

/** What the page of this rule says. */
export const shortStockPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the stock of a yarn is not enough",
  meaning:
    "The recipe says how much there is of a yarn, and all that is woven of it takes more, with what is spared for mistakes. Yarns alike in count, fibre, colour and package count as one, whatever their names.",
  reason: "The yarn runs out on the loom, and another dye lot shows as a stripe.",
  mend: "Buy more before the warp is wound: `drawcord plan` tells how much. Or weave fewer or shorter pieces.",
  source: "Drawcord's own",
  examples: {
    passes: [
      {
        title: "100 m for 40 ends of about a metre",
        cloth: tenByTen,
        project: {
          sett: "14 per cm",
          pickSett: "14 per cm",
          waste: "1 m",
          warp: { ...cotton, stock: "100 m" },
        },
      },
    ],
    fails: [
      {
        title: "10 m for 40 ends of about a metre",
        cloth: tenByTen,
        project: {
          sett: "14 per cm",
          pickSett: "14 per cm",
          waste: "1 m",
          warp: { ...cotton, stock: "10 m" },
        },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const shortStockEntry = {
  name: "short-stock",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
  ofPieces: "first",
} as const;

const say = /* @__PURE__ */ withPlace(({ limit, measured, unit, yarn }: ShortStockFact) => {
  const said = (value: number) => amountInWords({ value, unit }, 1);
  const called = yarn === "warp" || yarn === "weft" ? yarn : `weft ${yarn}`;
  return `there is ${said(measured)} of the yarn of the ${called}, and ${said(limit)} is needed, what is spared with it`;
});

/** The sentence of what it finds, under its name. */
export const shortStockSentence = { "short-stock": say };

/** A stock of yarn that is not enough. */
export const shortStock: Rule<"short-stock", ShortStockFact, Calculated> = /* @__PURE__ */ (() => ({
  ...shortStockEntry,
  of: calculated,
  *find({ buy, project }) {
    for (const { need, stock, toBuy, yarns } of buy) {
      if (stock === undefined || toBuy.value <= 1e-9 * need.value) continue;
      const have = need.value - toBuy.value;
      const { unit, value } = have > 0 ? stock : need;
      // In the words of the stock, which may be a length where the need is a weight.
      const of =
        have > 0 ? { measured: value, limit: (value * need.value) / have } : { measured: 0, limit: value };
      yield { ...of, unit, yarn: stockedOf(project.onWarp ?? project, yarns) };
    }
  },
  say,
  parts: ({ yarn }) => [
    ["yarns", yarn, "stock"],
    ["yarns", yarn],
  ],
}))();

/** The one of the yarns alike that states what there is of them. */
function stockedOf({ warp, warps = [], wefts = [] }: Project, names: readonly string[]): string {
  const stated = [...warps, ...wefts].find(({ name, stock }) => stock !== undefined && names.includes(name));
  return stated?.name ?? (warp?.stock === undefined ? names[0]! : "warp");
}
