import { convert, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import type { LaidOut } from "../cloth.js";
import type { ProjectFacts } from "../numbers/project.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { planned } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface UnusualNumberFact extends Fact {
  readonly measured: number;
  readonly limit: number;
  readonly unit: "%" | "per cm" | "g";
  /** Where the number stands in a recipe. */
  readonly at: readonly string[];
}

/** A number that a weaver may ask about: where it stands, and the least and most that are usual. */
interface Asked {
  readonly at: readonly string[];
  readonly unit: UnusualNumberFact["unit"];
  readonly least: number;
  readonly most: number;
  of(project: ProjectFacts): Quantity | undefined;
}

/** What is usual, from the finest silk to a rag rug (Drawcord's own). */
const asked: readonly Asked[] = [
  { at: ["cloth", "draw-in"], unit: "%", least: 0, most: 15, of: (project) => project.drawIn },
  { at: ["cloth", "take-up"], unit: "%", least: 0, most: 30, of: (project) => project.takeUp },
  {
    at: ["cloth", "shrinkage", "width"],
    unit: "%",
    least: 0,
    most: 30,
    of: (project) => project.shrinkage?.width,
  },
  {
    at: ["cloth", "shrinkage", "length"],
    unit: "%",
    least: 0,
    most: 30,
    of: (project) => project.shrinkage?.length,
  },
  { at: ["cloth", "sett"], unit: "per cm", least: 0.5, most: 100, of: (project) => project.sett },
  { at: ["cloth", "picks"], unit: "per cm", least: 0.3, most: 120, of: (project) => project.pickSett },
  { at: ["loom", "lingo-weight"], unit: "g", least: 3, most: 500, of: (project) => project.lingoWeight },
];

/** What the page of this rule says. */
export const unusualNumberPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a number beyond what is usual",
  meaning:
    "A draw-in above 15 %, a take-up or a shrinkage above 30 %, a sett outside 0.5 to 100 a cm (0.3 to 120 for picks), or a lingo outside 3 to 500 g stands in the recipe.",
  reason:
    "Such a number is mostly a slip of a digit, a unit or the ruler, and everything planned from it goes wrong.",
  mend: "Write the number that was meant. Where it is meant, as in fulled wool, waive the finding.",
  source: "Drawcord's own",
  examples: {
    passes: [
      { title: "a shrinkage of 30 %", cloth: tenByTen, project: { shrinkage: "30 %" } },
      { title: "a lingo of 500 g", cloth: tenByTen, project: { lingoWeight: "500 g" } },
    ],
    fails: [
      { title: "a shrinkage of 40 %", cloth: tenByTen, project: { shrinkage: "40 %" } },
      { title: "a lingo of 15 kg", cloth: tenByTen, project: { lingoWeight: "15 kg" } },
    ],
  },
}))();

/** A number beyond what is usual in the trade. */
export const unusualNumber: Rule<"unusual-number", UnusualNumberFact, LaidOut> = {
  name: "unusual-number",
  severity: "warning",
  changes: ["number"],
  ofNumbers: true,
  of: planned,
  *find({ options: { project } }) {
    if (project === undefined) return;
    const { facts } = project;
    for (const { at, least, most, of, unit } of asked) {
      const given = of(facts);
      if (given === undefined) continue;
      const measured = convert(given, unit).value;
      if (measured >= least - 1e-9 && measured <= most + 1e-9) continue;
      yield { at, measured, limit: measured < least ? least : most, unit };
    }
  },
  say({ at, limit, measured, unit }) {
    const said = (value: number) => printQuantity(quantity(value, unit), { decimals: 2 });
    const usual = measured < limit ? "at least" : "at most";
    return `${at.join(" ").replaceAll("-", " ")} is ${said(measured)}, where ${usual} ${said(limit)} is usual`;
  },
  parts: ({ at }) => [at, at.slice(0, 2), at.slice(0, 1)],
};
