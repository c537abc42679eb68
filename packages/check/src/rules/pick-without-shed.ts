import type { Drafted } from "../cloth.js";
import type { Span } from "../report.js";
import { plainDraft } from "../shaft-draft/plain.js";
import { counted, wrongRuns } from "../shaft-draft/wrong-runs.js";
import { drafted } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface PickWithoutShedFact extends Fact {
  readonly picks: Span;
  /** Whose threads it is about. */
  readonly system: "weft";
  /** The side of the cloth that the pick lies on. */
  readonly face: "face" | "back";
}

/** What the page of this rule says. */
export const pickWithoutShedPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a pick that lifts no end, or every end",
  meaning: "All ends lie on one side of the pick, so that the shed never opens for it.",
  reason: "The pick lies on the cloth without being woven in, and comes out when it is pulled.",
  mend: "Look for a pick left out of the treadling or the lift plan, or for one that lifts all shafts.",
  source: "common practice",
  examples: {
    passes: [{ title: "plain weave on two treadles", cloth: plainDraft }],
    fails: [
      {
        title: "a pick that lifts nothing, and one that lifts all",
        cloth: { ...plainDraft, shedding: { kind: "lift-plan", liftPlan: [[1], [], [2], [1, 2]] } },
      },
    ],
  },
}))();

const say = ({ picks: [first, last], face }: PickWithoutShedFact) => {
  const picks = first === last ? `pick ${first} lifts` : `picks ${first}-${last} lift`;
  return `${picks} ${face === "face" ? "no end" : "every end"}`;
};

/** The sentence of what it finds, under its name. */
export const pickWithoutShedSentence = { "pick-without-shed": say };

/** A pick that lifts no end, or every end. */
export const pickWithoutShed: Rule<"pick-without-shed", PickWithoutShedFact, Drafted> = {
  name: "pick-without-shed",
  severity: "error",
  changes: [],
  plainOnly: true,
  of: drafted,
  *find({ weft }) {
    const sides = Array.from({ length: weft.count }, (_, pick) => {
      const raised = weft.raised[pick]!;
      return raised === 0 ? "face" : raised === weft.length ? "back" : undefined;
    });
    for (const { span, what } of wrongRuns(sides, (side) => side)) {
      yield { picks: span, system: "weft", face: what, ...counted(span) };
    }
  },
  say,
  parts: () => [],
};
