/** What the plan of a shaft draft itself can get wrong, before its cloth is looked at. */
import type { Finding, Severity, Span } from "@drawcord/check";
import { drawdownOf } from "./drawdown.js";
import type { ShaftDraft } from "./types.js";

/** A rule for plain drafts: its data, its words and the function that looks. */
export interface DraftRule {
  readonly name: string;
  readonly severity: Severity;
  /** One line: what it finds. */
  readonly summary: string;
  /** What a finding says of the draft. */
  readonly meaning: string;
  /** Why it matters at the loom. */
  readonly reason: string;
  /** What to do about it. */
  readonly mend: string;
  readonly source: string;
  readonly examples: { readonly passes: ShaftDraft; readonly fails: ShaftDraft };
  /** Why the rule has nothing to look at in a draft, as a clause; nothing when it has. */
  readonly cannot?: (draft: ShaftDraft) => string | undefined;
  readonly find: (draft: ShaftDraft) => readonly Omit<Finding, "rule" | "severity">[];
}

/** Plain weave on two shafts and two treadles. */
const plain: ShaftDraft = {
  shafts: 2,
  threading: [[1], [2], [1], [2]],
  shedding: { kind: "tie-up", tieUp: [[1], [2]], treadling: [[1], [2]] },
  rising: true,
  warp: {},
  weft: {},
};

/** An end that hangs on no shaft. */
const endWithoutShaft: DraftRule = {
  name: "end-without-shaft",
  severity: "error",
  summary: "an end that hangs on no shaft",
  meaning: "The threading names no shaft for the end, so that no treadle and no lift ever moves it.",
  reason: "It lies on one side of the cloth from end to end, and nothing holds it.",
  mend: "Name its shaft in the threading, or leave the end out.",
  source: "common practice",
  examples: { passes: plain, fails: { ...plain, threading: [[1], [2], [], [2]] } },
  find: ({ threading }) =>
    runsOf(threading, (shafts) => (shafts.length === 0 ? "none" : undefined)).map(({ span }) => ({
      message: `${ends(span)} on no shaft`,
      ends: span,
      system: "warp",
      ...counted(span),
    })),
};

/** A treadle that is tied to no shaft. */
const treadleWithoutTie: DraftRule = {
  name: "treadle-without-tie",
  severity: "warning",
  summary: "a treadle that is tied to no shaft",
  meaning: "The tie-up has nothing for the treadle, so that treading it moves nothing.",
  reason: "A pick on it alone opens no shed; beside other treadles it is a step for nothing.",
  mend: "Tie it to the shafts it should move, or take it out of the treadling.",
  source: "common practice",
  examples: {
    passes: plain,
    fails: { ...plain, shedding: { kind: "tie-up", tieUp: [[1], [2], []], treadling: [[1], [2]] } },
  },
  cannot: ({ shedding }) =>
    shedding.kind === "tie-up" ? undefined : "the draft has a lift plan and no treadles",
  find({ shedding }) {
    if (shedding.kind !== "tie-up") return [];
    return runsOf(shedding.tieUp, (shafts) => (shafts.length === 0 ? "none" : undefined)).map(({ span }) => ({
      message:
        span[0] === span[1]
          ? `treadle ${span[0]} is tied to no shaft`
          : `treadles ${span[0]}-${span[1]} are tied to no shafts`,
      ...counted(span),
    }));
  },
};

/** A pick that lifts no end, or every end. */
const pickWithoutShed: DraftRule = {
  name: "pick-without-shed",
  severity: "error",
  summary: "a pick that lifts no end, or every end",
  meaning: "All ends lie on one side of the pick, so that the shed never opens for it.",
  reason: "The pick lies on the cloth without being woven in, and comes out when it is pulled.",
  mend: "Look for a pick left out of the treadling or the lift plan, or one that treads all shafts.",
  source: "common practice",
  examples: {
    passes: plain,
    fails: { ...plain, shedding: { kind: "lift-plan", liftPlan: [[1], [], [2], [1, 2]] } },
  },
  find(draft) {
    const drawdown = drawdownOf(draft);
    const last = drawdown.columns & 31;
    const picks = Array.from({ length: drawdown.rows }, (_, pick) => {
      const words = Array.from(
        { length: drawdown.stride },
        (_word, i) => drawdown.words[pick * drawdown.stride + i]!,
      );
      if (words.every((word) => word === 0)) return "no end";
      const full = (i: number) => (i === words.length - 1 && last !== 0 ? 2 ** last - 1 : 2 ** 32 - 1);
      return words.every((word, i) => word === full(i)) ? "every end" : undefined;
    });
    return runsOf(picks, (lifted) => lifted).map(({ span, what }) => ({
      message: `${span[0] === span[1] ? `pick ${span[0]} lifts` : `picks ${span[0]}-${span[1]} lift`} ${what}`,
      picks: span,
      system: "weft",
      face: what === "no end" ? "face" : "back",
      ...counted(span),
    }));
  },
};

/** Every rule for plain drafts. */
export const draftRules: readonly DraftRule[] = [endWithoutShaft, pickWithoutShed, treadleWithoutTie];

/** Neighbours that are wrong in the same way, together, counted from 1. */
function runsOf<T>(
  things: readonly T[],
  wrong: (thing: T) => string | undefined,
): { readonly span: Span; readonly what: string }[] {
  const runs: { span: [number, number]; what: string }[] = [];
  things.forEach((thing, i) => {
    const what = wrong(thing);
    if (what === undefined) return;
    const before = runs.at(-1);
    if (before !== undefined && before.what === what && before.span[1] === i) before.span[1] = i + 1;
    else runs.push({ span: [i + 1, i + 1], what });
  });
  return runs;
}

function ends([first, last]: Span): string {
  return first === last ? `end ${first} hangs` : `ends ${first}-${last} hang`;
}

/** How many were joined, where it is more than one. */
function counted([first, last]: Span): { readonly count?: number } {
  return last === first ? {} : { count: last - first + 1 };
}
