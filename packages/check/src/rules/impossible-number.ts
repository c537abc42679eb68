import type { YarnError, YarnErrorCode } from "@drawcord/yarn";
import type { LaidOut } from "../cloth.js";
import { tenByTen } from "../numbers/ten-by-ten.js";
import { withPlace } from "../words.js";
import { planned } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface ImpossibleNumberFact extends Fact {
  /** Why the numbers cannot be. */
  readonly trouble: string;
  /** The same as a code: that of the error of `@drawcord/yarn` which says so. */
  readonly code: YarnErrorCode;
  /** What was found and what was wanted, by name. */
  readonly facts: YarnError["facts"];
}

/** What the page of this rule says. */
export const impossibleNumberPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "numbers of the project that cannot be",
  meaning:
    "The project cannot be worked out, because one of its numbers leaves nothing to weave, such as hems longer than the piece, or is beyond anything there is, such as a yarn finer than any that is spun.",
  reason: "No warp can be planned from it, and none of its other numbers can be trusted.",
  mend: "Look at the number that the sentence names: most often a digit, a unit or the system of a yarn count is not the one that was meant.",
  source: "Drawcord's own",
  examples: {
    passes: [
      {
        title: "hems shorter than the cloth that is woven",
        cloth: tenByTen,
        project: { pickSett: "4 per cm", hems: "4 cm" },
      },
    ],
    fails: [
      {
        title: "hems of 40 cm on 10 cm of cloth",
        cloth: tenByTen,
        project: { pickSett: "4 per cm", hems: "40 cm" },
      },
    ],
  },
}))();

/** What every check knows of the rule, whether numbers are looked at or not. */
export const impossibleNumberEntry = {
  name: "impossible-number",
  severity: "error",
  changes: ["number"],
  ofNumbers: true,
} as const;

const say = /* @__PURE__ */ withPlace(
  ({ trouble }: ImpossibleNumberFact) => `the numbers of the project cannot be: ${trouble}`,
);

/** The sentence of what it finds, under its name. */
export const impossibleNumberSentence = { "impossible-number": say };

/** Numbers of the project that cannot be. */
export const impossibleNumber: Rule<"impossible-number", ImpossibleNumberFact, LaidOut> =
  /* @__PURE__ */ (() => ({
    ...impossibleNumberEntry,
    of: planned,
    *find({ numbers }) {
      const found = numbers?.();
      if (found !== undefined && "code" in found) {
        const { code, facts, message } = found;
        yield { trouble: message, code, facts };
      }
    },
    say,
    parts: () => [["project"], ["cloth"], ["yarns"]],
  }))();
