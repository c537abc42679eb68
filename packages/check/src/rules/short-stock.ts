import { convert, type ProjectYarn, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import type { Calculated } from "../cloth.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ShortStockFact extends Fact {
  /** What there is. */
  readonly measured: number;
  /** What is needed. */
  readonly limit: number;
  readonly unit: Quantity["unit"];
  /** The yarn, by its name in the recipe. */
  readonly yarn: string;
}

const cotton = { yarn: "16/2 Ne", fibre: "cotton" };

/** What the page of this rule says. */
export const shortStockPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the stock of a yarn is not enough",
  meaning: "The recipe says how much there is of a yarn, and its warp or its weft takes more.",
  reason: "The yarn gives out on the loom, and another dye lot shows as a stripe.",
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

/** A stock of yarn that is not enough. */
export const shortStock: Rule<"short-stock", ShortStockFact, Calculated> = {
  name: "short-stock",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
  of: calculated,
  *find({ project, worked }) {
    const uses = worked.warpYarns.length > 1 ? worked.warpYarns : [worked.warpYarn];
    for (const used of [...uses, ...worked.weftYarn]) {
      const stock = used && stocked(project, used.name)?.stock;
      const needed = stock?.kind === "mass" ? used?.mass : used?.length;
      if (stock === undefined || needed === undefined) continue;
      const limit = convert(needed, stock.unit).value;
      if (stock.value < limit) yield { measured: stock.value, limit, unit: stock.unit, yarn: used!.name };
    }
  },
  say({ limit, measured, unit, yarn }) {
    const said = (value: number) => printQuantity(quantity(value, unit), { decimals: 1 });
    const called = yarn === "warp" || yarn === "weft" ? yarn : `weft ${yarn}`;
    return `there is ${said(measured)} of the yarn of the ${called}, and ${said(limit)} is needed`;
  },
  parts: ({ yarn }) => [
    ["yarns", yarn, "stock"],
    ["yarns", yarn],
  ],
};

function stocked(
  { warp, warps = [], wefts = [] }: Calculated["project"],
  name: string,
): ProjectYarn | undefined {
  return [...warps, ...wefts].find((yarn) => yarn.name === name) ?? (name === "warp" ? warp : undefined);
}
