import type { Drafted } from "../cloth.js";
import type { Span } from "../report.js";
import { plainDraft } from "../shaft-draft/plain.js";
import { counted, wrongRuns } from "../shaft-draft/wrong-runs.js";
import { drafted } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface EndWithoutShaftFact extends Fact {
  readonly ends: Span;
  /** Whose threads it is about. */
  readonly system: "warp";
}

/** What the page of this rule says. */
export const endWithoutShaftPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "an end that hangs on no shaft",
  meaning: "The threading names no shaft for the end, so that no treadle and no lift ever moves it.",
  reason: "It lies on one side of the cloth from end to end, and nothing holds it.",
  mend: "Name its shaft in the threading, or leave the end out.",
  source: "common practice",
  examples: {
    passes: [{ title: "plain weave on two treadles", cloth: plainDraft }],
    fails: [
      {
        title: "an end that the threading leaves out",
        cloth: { ...plainDraft, threading: [[1], [2], [], [2]] },
      },
    ],
  },
}))();

const say = ({ ends: [first, last] }: EndWithoutShaftFact) =>
  first === last ? `end ${first} hangs on no shaft` : `ends ${first}-${last} hang on no shaft`;

/** The sentence of what it finds, under its name. */
export const endWithoutShaftSentence = { "end-without-shaft": say };

/** An end that hangs on no shaft. */
export const endWithoutShaft: Rule<"end-without-shaft", EndWithoutShaftFact, Drafted> = {
  name: "end-without-shaft",
  severity: "error",
  changes: [],
  plainOnly: true,
  of: drafted,
  *find({ shaftDraft: { threading } }) {
    const bare = wrongRuns(threading, (shafts) => (shafts.length === 0 ? "none" : undefined));
    for (const { span } of bare) yield { ends: span, system: "warp", ...counted(span) };
  },
  say,
  parts: () => [],
};
