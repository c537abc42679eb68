import type { Drafted } from "../cloth.js";
import type { Span } from "../report.js";
import { plainDraft } from "../shaft-draft/plain.js";
import { counted, wrongRuns } from "../shaft-draft/wrong-runs.js";
import { drafted } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface TreadleWithoutTieFact extends Fact {
  /** The first and the last of the treadles. */
  readonly treadles: Span;
}

/** What the page of this rule says. */
export const treadleWithoutTiePage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a treadle that is tied to no shaft",
  meaning: "The tie-up has nothing for the treadle, so that treading it moves nothing.",
  reason: "A pick on it alone opens no shed; beside other treadles it is a step for nothing.",
  mend: "Tie it to the shafts it should move, or take it out of the treadling.",
  source: "common practice",
  examples: {
    passes: [{ title: "plain weave on two treadles", cloth: plainDraft }],
    fails: [
      {
        title: "a third treadle without a tie",
        cloth: { ...plainDraft, shedding: { kind: "tie-up", tieUp: [[1], [2], []], treadling: [[1], [2]] } },
      },
    ],
  },
}))();

const say = ({ treadles: [first, last] }: TreadleWithoutTieFact) =>
  first === last ? `treadle ${first} is tied to no shaft` : `treadles ${first}-${last} are tied to no shafts`;

/** The sentence of what it finds, under its name. */
export const treadleWithoutTieSentence = { "treadle-without-tie": say };

/** A treadle that is tied to no shaft. */
export const treadleWithoutTie: Rule<"treadle-without-tie", TreadleWithoutTieFact, Drafted> = {
  name: "treadle-without-tie",
  severity: "warning",
  changes: [],
  plainOnly: true,
  of(cloth) {
    const on = drafted(cloth);
    return typeof on !== "string" && on.shaftDraft.shedding.kind !== "tie-up"
      ? "the draft has a lift plan and no treadles"
      : on;
  },
  *find({ shaftDraft: { shedding } }) {
    if (shedding.kind !== "tie-up") return;
    const bare = wrongRuns(shedding.tieUp, (shafts) => (shafts.length === 0 ? "none" : undefined));
    for (const { span } of bare) yield { treadles: span, ...counted(span) };
  },
  say,
  parts: () => [],
};
