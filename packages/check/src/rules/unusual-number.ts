import { convert, type Quantity } from "@drawcord/yarn";
import type { LaidOut } from "../cloth.js";
import { amountInWords } from "../numbers/amount.js";
import type { ProjectFacts } from "../numbers/project.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { withPlace } from "../words.js";
import { planned } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface UnusualNumberFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "%" | "per cm" | "g";
  /** Where the number stands in a recipe; `measured` where a sample tells it. */
  readonly at: readonly string[];
  /** What it is called. */
  readonly number: string;
  /** The fibre of which so much is usual; left out where none decides. */
  readonly fibre?: string;
}

/** A number that a weaver may ask about: where it stands, given or measured, and the least and most that are usual. */
interface Asked {
  readonly at: readonly string[];
  /** The measure of a sample that tells it. */
  readonly measure?: "width" | "length" | "washedWidth" | "washedLength" | "picks";
  /** The system whose fibre decides how much is usual. */
  readonly fibreOf?: "warp" | "weft";
  readonly unit: UnusualNumberFact["unit"];
  readonly least: number;
  readonly most: number;
  of(project: ProjectFacts): Quantity | undefined;
}

/** What is usual, from the finest silk to a rag rug (Drawcord's own). */
const asked: readonly Asked[] = [
  {
    at: ["cloth", "draw-in"],
    measure: "width",
    unit: "%",
    least: 0,
    most: 15,
    of: (project) => project.drawIn,
  },
  {
    at: ["cloth", "take-up"],
    measure: "length",
    unit: "%",
    least: 0,
    most: 30,
    of: (project) => project.takeUp,
  },
  {
    at: ["cloth", "shrinkage", "width"],
    measure: "washedWidth",
    fibreOf: "weft",
    unit: "%",
    least: 0,
    most: 30,
    of: (project) => project.shrinkage?.width,
  },
  {
    at: ["cloth", "shrinkage", "length"],
    measure: "washedLength",
    fibreOf: "warp",
    unit: "%",
    least: 0,
    most: 30,
    of: (project) => project.shrinkage?.length,
  },
  { at: ["cloth", "sett"], unit: "per cm", least: 0.5, most: 100, of: (project) => project.sett },
  {
    at: ["cloth", "picks"],
    measure: "picks",
    unit: "per cm",
    least: 0.3,
    most: 120,
    of: (project) => project.pickSett,
  },
  { at: ["loom", "lingo-weight"], unit: "g", least: 3, most: 500, of: (project) => project.lingoWeight },
];

/** The most that cloth of a fibre shrinks in the wash, in percent (Drawcord's own); of another, what is usual of any. */
const SHRINKS: Readonly<Record<string, number>> = {
  cotton: 20,
  linen: 15,
  hemp: 15,
  jute: 15,
  silk: 15,
  wool: 50,
};

/** What the sample's measures are called in a recipe. */
const KEYS: Readonly<Record<NonNullable<Asked["measure"]>, string>> = {
  width: "width",
  length: "length",
  washedWidth: "washed-width",
  washedLength: "washed-length",
  picks: "picks",
};

/** Where a number stands: with the sample, where that tells it. */
function placeOf({ at, measure }: Asked, { measured }: ProjectFacts): readonly string[] {
  if (measure === undefined || measured?.[measure] === undefined) return at;
  const isTold = {
    width: measured.widthInReed,
    length: measured.warp,
    washedWidth: measured.width,
    washedLength: measured.length,
    picks: measured.over,
  }[measure];
  return isTold === undefined ? at : ["measured", KEYS[measure]];
}

/** The fibre of the warp, or of the ground weft. */
function fibreOf(
  system: "warp" | "weft" | undefined,
  { warp, wefts = [] }: ProjectFacts,
): string | undefined {
  if (system === "warp") return warp?.fibre;
  return system === "weft" ? (wefts.find(({ name }) => name === "weft") ?? wefts[0])?.fibre : undefined;
}

/** What the page of this rule says. */
export const unusualNumberPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a number beyond what is usual",
  meaning:
    "A draw-in above 15 %, a take-up above 30 %, a shrinkage above 30 % (20 % for cotton, 15 % for linen, hemp, jute and silk, 50 % for wool), a sett outside 0.5 to 100 a cm (0.3 to 120 for picks), or a lingo outside 3 to 500 g stands in the recipe, or follows from what was measured on its sample.",
  reason:
    "Such a number is most often a slip: a digit, a unit, or a ruler misread, and everything planned from it goes wrong.",
  mend: "Write the number that was meant. Where it is meant, as in fulled wool, waive the finding.",
  source: "Drawcord's own",
  examples: {
    passes: [
      { title: "a shrinkage of 30 %", cloth: tenByTen, project: { shrinkage: "30 %" } },
      {
        title: "a shrinkage of 15 % in linen",
        cloth: tenByTen,
        project: { shrinkage: "15 %", warp: { yarn: "16 lea", fibre: "linen" } },
      },
      { title: "a lingo of 500 g", cloth: tenByTen, project: { lingoWeight: "500 g" } },
    ],
    fails: [
      { title: "a shrinkage of 40 %", cloth: tenByTen, project: { shrinkage: "40 %" } },
      {
        title: "a shrinkage of 30 % in linen",
        cloth: tenByTen,
        project: { shrinkage: "30 %", warp: { yarn: "16 lea", fibre: "linen" } },
      },
      { title: "a lingo of 15 kg", cloth: tenByTen, project: { lingoWeight: "15 kg" } },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const unusualNumberEntry = {
  name: "unusual-number",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(({ at, fibre, limit, measured, number, unit }: UnusualNumberFact) => {
  const said = (value: number) => amountInWords({ value, unit }, 2);
  const usual = measured < limit ? "at least" : "at most";
  const of = fibre === undefined ? "" : ` of ${fibre}`;
  return at[0] === "measured"
    ? `the sample tells ${said(measured)} as ${number}, where ${usual} ${said(limit)} is usual${of}; it looks like a slip of the ruler`
    : `${number} is ${said(measured)}, where ${usual} ${said(limit)} is usual${of}`;
});

/** The sentence of what it finds, under its name. */
export const unusualNumberSentence = { "unusual-number": say };

/** A number beyond what is usual in the trade. */
export const unusualNumber: Rule<"unusual-number", UnusualNumberFact, LaidOut> = /* @__PURE__ */ (() => ({
  ...unusualNumberEntry,
  of: planned,
  *find({ options: { project } }) {
    if (project === undefined) return;
    const { facts } = project;
    for (const one of asked) {
      const { least, of, unit } = one;
      const given = of(facts);
      if (given === undefined) continue;
      const fibre = fibreOf(one.fibreOf, facts);
      const ofFibre = fibre === undefined || !Object.hasOwn(SHRINKS, fibre) ? undefined : SHRINKS[fibre];
      const most = ofFibre ?? one.most;
      const measured = convert(given, unit).value;
      if (measured >= least - 1e-9 && measured <= most + 1e-9) continue;
      yield {
        at: placeOf(one, facts),
        number: one.at.slice(1).join(" of the ").replaceAll("-", " "),
        measured,
        limit: measured < least ? least : most,
        unit,
        ...(ofFibre !== undefined && { fibre: fibre! }),
      };
    }
  },
  say,
  parts: ({ at }) => [at, at.slice(0, 2), at.slice(0, 1)],
}))();
