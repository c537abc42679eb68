import { many } from "@drawcord/base";
import type { Cloth } from "../cloth.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import type { YarnOrder } from "../put-together.js";
import { withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface CutStripeFact extends Fact {
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** The yarn of the stripe. */
  readonly yarn: string;
  /** Threads that the stripe comes to. */
  readonly measured: number;
  /** Threads that it has in the order. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "threads";
  /** The block whose weft it is; left out for the warp and for the weft of a whole piece. */
  readonly block?: string;
  /** The way to the order in the recipe. */
  readonly path: readonly (string | number)[];
}

/** What the page of this rule says. */
export const cutStripePage: RulePage = /* @__PURE__ */ (() => ({
  summary: "an order of yarns ends in the middle of a stripe",
  meaning:
    "An order of yarns over the ends or over the picks begins again where it ends, and at the last thread it stands within a stripe, which then comes out narrower than the others.",
  reason:
    "A cut stripe at one edge makes the cloth look shifted, and pieces laid end to end have stripes that do not line up.",
  mend: "Take a whole number of repeats, or that and the first stripe once more, so that both edges are alike; or write the last stripe as it is.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "twenty ends in stripes of four and six",
        cloth: tenByTen,
        options: { yarnOrders: [orderOf("blue*4 white*6", 20)] },
      },
      {
        title: "the first stripe once more, so that both edges are alike",
        cloth: tenByTen,
        options: { yarnOrders: [orderOf("blue*4 white*6", 24)] },
      },
    ],
    fails: [
      {
        title: "twenty-two ends in stripes of four and six",
        cloth: tenByTen,
        options: { yarnOrders: [orderOf("blue*4 white*6", 22)] },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(({ block, limit, measured, system, yarn }: CutStripeFact) => {
  const of = system === "warp" ? "the warp" : block === undefined ? "the weft" : `the weft of ${block}`;
  const threads = many(measured, system === "warp" ? "end" : "pick");
  return `the order of yarns of ${of} ends after ${threads} of a stripe of ${limit} of ${yarn}`;
});

/** The sentence of what it finds, under its name. */
export const cutStripeSentence = { "cut-stripe": say };

/** An order of yarns that ends in the middle of a stripe. */
export const cutStripe: Rule<"cut-stripe", CutStripeFact> = {
  name: "cut-stripe",
  severity: "note",
  changes: [],
  of: anyCloth,
  *find({ options: { yarnOrders = [] } }: Cloth) {
    for (const order of yarnOrders) {
      const stripe = cutStripeOf(order);
      if (stripe === undefined) continue;
      const { block, path, system } = order;
      yield { ...stripe, system, unit: "threads", path, ...(block !== undefined && { block }) };
    }
  },
  say,
  parts: ({ path }) => [path],
};

/** The stripe that the last thread of an order cuts: its threads, and those it has where it is whole. */
function cutStripeOf({
  threads,
  yarns,
}: YarnOrder): Pick<CutStripeFact, "yarn" | "measured" | "limit"> | undefined {
  const rest = threads % yarns.length;
  const yarn = yarns[rest];
  if (rest === 0 || yarn === undefined || yarns[rest - 1] !== yarn) return undefined;
  if (yarns.every((one) => one === yarn)) return undefined;
  let first = rest - 1;
  while (first > 0 && yarns[first - 1] === yarn) first--;
  let next = rest + 1;
  while (next < yarns.length && yarns[next] === yarn) next++;
  return { yarn, measured: rest - first, limit: next - first };
}

/** An order such as `blue*4 white*6` over the ends, for the examples. */
function orderOf(text: string, threads: number): YarnOrder {
  const yarns = text.split(" ").flatMap((run) => {
    const [yarn = "", times = "1"] = run.split("*");
    return new Array<string>(Number(times)).fill(yarn);
  });
  return { system: "warp", yarns, threads, path: ["colours", "warp"] };
}
