import { figure } from "../words.js";
import type { Rule } from "./rule.js";

/** Floats on the back more than this many times as long as on the face are worth knowing of (common practice). */
const TIMES = 2;

/** A back with much longer floats than the face, or the other way round. */
export const unlikeSides: Rule = {
  name: "unlike-sides",
  severity: "note",
  summary: "one side of the cloth has much longer floats than the other",
  meaning: "The longest float of a system on one side is more than twice as long as on the other.",
  reason:
    "Damask is as sound on the back as on the face. Where it is not, the cloth wears from one side and belongs with that side down, or lined.",
  mend: "Look at the back before choosing the limit: draw the figure so that drawn and undrawn areas are alike in size, or turn some squares.",
  source: "common practice",
  examples: {
    passes: [
      { title: "twill of two up and two down", cloth: "##..\n#..#\n..##\n.##.", options: { repeat: "both" } },
    ],
    fails: [
      { title: "satin of five", cloth: "#....\n..#..\n....#\n.#...\n...#.", options: { repeat: "both" } },
    ],
  },
  *find({ warp, weft }) {
    for (const [system, threads] of [
      ["warp", warp.threads],
      ["weft", weft.threads],
    ] as const) {
      const raised = longestOf(threads.raised);
      const lowered = longestOf(threads.lowered);
      if (Math.min(raised, lowered) <= 0 || Math.max(raised, lowered) <= TIMES * Math.min(raised, lowered))
        continue;
      const onFace = system === "warp" ? raised > lowered : lowered > raised;
      yield {
        measured: Math.max(raised, lowered),
        limit: TIMES * Math.min(raised, lowered),
        unit: "threads",
        face: onFace ? "face" : "back",
        system,
      };
    }
  },
  say({ system, face, measured = 0, limit = 0 }) {
    const other = face === "face" ? "back" : "face";
    return `the longest ${system} float passes ${measured} threads on the ${face}, and ${figure(limit / TIMES)} on the ${other}`;
  },
};

function longestOf(counts: Float64Array): number {
  return counts.findLastIndex((count) => count > 0);
}
