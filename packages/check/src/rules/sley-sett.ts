import { convert, printSley, type Sley, toMetric } from "@drawcord/yarn";
import type { Calculated } from "../cloth.js";
import { off } from "../limits/off.js";
import { type Amount, amountInWords, amountOf } from "../numbers/amount.js";
import { likelyMistake, type NumberSlip, slipsOfInches } from "../numbers/likely-mistake.js";
import { because, type Mistake } from "../numbers/mistake.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { withPlace } from "../words.js";
import { calculated } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface SleySettFact extends Fact {
  /** Ends a cm that the sleyed reed makes. */
  readonly measured: number;
  /** Ends a cm of the sett. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "per cm";
  /** Ends in each dent. */
  readonly sley: Sley;
  /** What the sleyed reed makes, in the unit of the sett. */
  readonly made: Amount;
  /** The sett as it is written. */
  readonly sett: Amount;
  /** Which of the two the plan goes by. */
  readonly goesBy: "sett" | "sley";
  /** The mistake that would explain it exactly. */
  readonly likely?: Mistake;
}

/** What the page of this rule says. */
export const sleySettPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "the sleyed reed does not give the sett",
  meaning:
    "The recipe gives a reed, a sley and a sett, and so many ends in the dents of this reed make another sett; or it gives a reed and a sett that no sley of a few ends in a dent comes near. Widths and yarn go by the sley, because that is what the warp is threaded in; without a sley, by the sett.",
  reason:
    "The warp is sleyed by the reed and comes out wider or narrower than everything that was planned by the sett.",
  mend: "Correct the sett, the sley or the reed: `drawcord plan` tells what the reed makes and which sleys come nearest.",
  limit: "`off: 5 %` in `limits`: how far the two may lie apart. Usual: 3 %.",
  source: "Drawcord's own",
  examples: {
    passes: [
      {
        title: "2 in a dent of 6 a cm are 12 a cm",
        cloth: tenByTen,
        project: { reed: "60 per 10 cm", sley: "2", sett: "12 per cm" },
      },
    ],
    fails: [
      {
        title: "3 in a dent of 6 a cm for 12 a cm",
        cloth: tenByTen,
        project: { reed: "60 per 10 cm", sley: "3", sett: "12 per cm" },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const sleySettEntry = {
  name: "sley-sett",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(
  ({ goesBy, likely, made, sett, sley }: SleySettFact) =>
    `sleyed ${printSley(sley)}, the reed makes ${amountInWords(made, 2)}, and the sett is ${amountInWords(sett)}; the plan goes by the ${goesBy}${because(likely)}`,
);

/** The sentence of what it finds, under its name. */
export const sleySettSentence = { "sley-sett": say };

/** A sley that does not give the sett. */
export const sleySett: Rule<"sley-sett", SleySettFact, Calculated> = /* @__PURE__ */ (() => ({
  ...sleySettEntry,
  of: calculated,
  *find({ options, project, worked }) {
    const { reed } = worked;
    if (reed === undefined || project.sett === undefined) return;
    const sett = toMetric(project.sett).value;
    const made = toMetric(reed.sett).value;
    if (Math.abs(made / sett - 1) * 100 <= (options.limits?.off ?? off.usual) + 1e-9) return;
    const dents = toMetric(reed.dents).value;
    const slips: readonly NumberSlip[] = [
      { value: dents, mistake: { mistake: "dents-for-ends" } },
      ...slipsOfInches((times) => made * times),
      ...[10 / 2.54, 2.54 / 10].map((times): NumberSlip => {
        return { value: made * times, mistake: { mistake: "inch-for-ten-centimetres" } };
      }),
    ];
    const likely = likelyMistake(sett, slips, 0.005 * sett) ?? otherSley(sett / dents);
    yield {
      measured: made,
      limit: sett,
      unit: "per cm",
      sley: reed.sley,
      made: amountOf(convert(reed.sett, project.sett.unit)),
      sett: amountOf(project.sett),
      goesBy: project.sley === undefined ? "sett" : "sley",
      ...(likely !== undefined && { likely }),
    };
  },
  say,
  parts: () => [["cloth", "sley"], ["cloth", "reed"], ["cloth"]],
}))();

/** More ends than these go into no dent. */
const MOST_IN_A_DENT = 8;

/** The mistake by which another number of ends went into every dent; undefined where that is no whole number. */
function otherSley(ends: number): Mistake | undefined {
  const whole = Math.round(ends);
  if (whole < 1 || whole > MOST_IN_A_DENT || Math.abs(ends / whole - 1) > 0.005) return undefined;
  return { mistake: "other-sley", ends: whole };
}
