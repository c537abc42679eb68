import { many } from "@drawcord/base";
import type { Cloth, System } from "../cloth.js";
import { joinFaults, type VisitFault } from "../regions.js";
import { withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import { GROUND } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface LooseThreadFact extends Fact {
  /** The side of the cloth. */
  readonly face: "face" | "back";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** The weft of the picks, where wefts are told apart. */
  readonly weft?: string;
}

/** What the page of this rule says. */
export const looseThreadPage: RulePage = {
  summary: "an end or a pick that never interlaces",
  meaning:
    "The thread lies on one side of the cloth from end to end: it is never raised, or never lowered, and nothing holds it.",
  reason: "It can be drawn out of the cloth whole, and will be by the first thing that catches it.",
  mend: "Let it change sides at least as often as the limit of floats asks: look for an end threaded on a shaft that no treadle moves, or for a treadle that moves no shaft.",
  source: "common practice",
  examples: {
    passes: [
      { title: "an end that is lowered once", cloth: "##.\n..#\n##." },
      { title: "a pick that lies under one end", cloth: "#.#\n..#\n.#." },
    ],
    fails: [
      { title: "an end that is always raised", cloth: "##.\n.##\n##." },
      { title: "a pick over all ends", cloth: "#.#\n...\n.#." },
    ],
  },
};

const say = /* @__PURE__ */ withPlace(({ system, face, count = 1 }: LooseThreadFact) => {
  const thread = system === "warp" ? "end" : "pick";
  const never = count === 1 ? "never interlaces: it lies" : "never interlace: they lie";
  return `${count === 1 ? `a loose ${thread}` : many(count, `loose ${thread}`)} that ${never} on the ${face} all along`;
});

/** The sentence of what it finds, under its name. */
export const looseThreadSentence = { "loose-thread": say };

/** An end or a pick that lies over or under all the threads it crosses. */
export const looseThread: Rule<"loose-thread", LooseThreadFact> = {
  name: "loose-thread",
  severity: "error",
  changes: ["tie", "ground-threading", "lift"],
  of: anyCloth,
  *find(cloth) {
    const { warp, weft } = cloth;
    for (const face of ["face", "back"] as const) {
      const regions = joinFaults(cloth, (visit) =>
        eachLoose(warp, face === "face" ? 1 : 0, (end) => visitEnd(cloth, end, visit)),
      );
      for (const { measured: _, ...region } of regions) yield { ...region, face, system: "warp" };
    }
    for (const face of ["face", "back"] as const) {
      const regions = joinFaults(cloth, (visit) =>
        eachLoose(weft, face === "face" ? 0 : 1, (pick) => visitPick(cloth, pick, visit)),
      );
      for (const { measured: _, ...region } of regions) {
        const weftName = cloth.wefts[cloth.weftOfPick[region.picks[0] - 1]!]!;
        yield { ...region, face, system: "weft", ...(weftName !== "" && { weft: weftName }) };
      }
    }
  },
  say,
  parts: () => GROUND,
};

/** Visits the threads of a system that are of one state all along. */
export function eachLoose(
  { count, length, kinds, threads, raised }: System,
  state: 0 | 1,
  visit: (thread: number) => void,
): void {
  if (length === 0) return;
  for (let thread = 0; thread < count; thread++) {
    const kind = kinds.kindOf[thread]!;
    if (threads.changes[kind] === 0 && raised[thread] === state * length) visit(thread);
  }
}

function visitEnd({ weft }: Cloth, end: number, visit: VisitFault): void {
  visit(end, end, 0, weft.count - 1, 1);
}

function visitPick({ warp }: Cloth, pick: number, visit: VisitFault): void {
  visit(0, warp.count - 1, pick, pick, 1);
}
