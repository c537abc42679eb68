import type { Cloth } from "../cloth.js";
import { allowedFloat } from "../float-limit.js";
import { joinFaults, type VisitFault } from "../regions.js";
import { many } from "../words.js";
import type { Rule } from "./rule.js";

/** A float that runs round the edge of the cloth, from one pick into the next of the same weft. */
export const edgeFloat: Rule = {
  name: "edge-float",
  severity: "warning",
  summary: "a weft float that runs on round the selvedge",
  meaning:
    "Where the weft turns, the outermost ends lie on the same side of it on both picks, so that the float at the end of one pick runs on into the next, and together they are longer than the limit.",
  reason:
    "The turn is not held: the edge end hangs free, the loop catches, and the edge draws in or frays although every single float is short enough.",
  mend: "Give the edge a few ends in plain weave, let one end float outside the weave for every turn to go round, or throw the first pick from the other side.",
  limit:
    "The limit of floats, `float` in `limits`: for the weft that turns, and for the warp where an edge end is not caught.",
  source: "common practice",
  examples: {
    passes: [
      {
        title: "a turn that goes round the edge end",
        cloth: "#..#\n.##.",
        options: { limits: { float: { threads: 3 } } },
      },
      {
        title: "floats of 2 and 1 that meet at the right edge, where 3 are allowed",
        cloth: "#.##.\n.##..",
        options: { limits: { float: { threads: 3 } } },
      },
    ],
    fails: [
      {
        title: "two floats of 2 that meet at the right edge",
        cloth: "#.#..\n.##..",
        options: { limits: { float: { threads: 3 } } },
      },
      {
        title: "two floats of 2 that meet at the left edge, when the first pick comes from the right",
        cloth: "..#.#\n..##.",
        options: { limits: { float: { threads: 3 } }, firstPickFrom: "right" },
      },
    ],
  },
  *find(cloth) {
    for (const [index, weft] of cloth.wefts.entries()) {
      const allowed = allowedFloat(cloth.options, "weft", weft);
      for (const state of [0, 1] as const) {
        const regions = joinFaults(cloth, (visit) => eachTurn(cloth, index, state, allowed.threads, visit));
        for (const region of regions) {
          yield {
            ...region,
            limit: allowed.threads,
            unit: "threads",
            face: state === 0 ? "face" : "back",
            system: "weft",
            ...(weft !== "" && { weft }),
          };
        }
      }
    }
  },
  say({ face, weft, measured = 0, limit = 0, count = 1 }) {
    const of = `on the ${face}${weft === undefined ? "" : ` in the weft ${weft}`}`;
    const floats = count === 1 ? "weft float" : `${count} weft floats`;
    const long = count === 1 ? `of ${many(measured, "end")}` : `the longest of ${many(measured, "end")}`;
    const verb = count === 1 ? "runs" : "run";
    return `${floats} ${of}, ${long}, ${verb} round the turn at the selvedge, where ${limit} ${limit === 1 ? "is" : "are"} allowed`;
  },
};

/** Visits the turns of one weft at which two floats of one state meet that are short enough apart, but not together. */
function eachTurn(cloth: Cloth, weft: number, state: 0 | 1, allowed: number, visit: VisitFault): void {
  const { weftOfPick, options } = cloth;
  const { grid, joined } = cloth.weft;
  if (joined) return;
  let atRight = options.firstPickFrom !== "right";
  let before = -1;
  weftOfPick.forEach((of, pick) => {
    if (of !== weft) return;
    if (before !== -1) {
      const one = edgeRun(cloth, before, atRight, state);
      const other = edgeRun(cloth, pick, atRight, state);
      if (one > 0 && other > 0 && one <= allowed && other <= allowed && one + other > allowed) {
        const reach = Math.max(one, other);
        const first = atRight ? grid.columns - reach : 0;
        visit(first, first + reach - 1, before, pick, one + other);
      }
      atRight = !atRight;
    }
    before = pick;
  });
}

/** How many ends from an edge on are of the state. */
function edgeRun({ weft }: Cloth, pick: number, atRight: boolean, state: 0 | 1): number {
  const { grid } = weft;
  let length = 0;
  while (length < grid.columns) {
    if (grid.get(pick, atRight ? grid.columns - 1 - length : length) !== (state === 1)) break;
    length++;
  }
  return length;
}
