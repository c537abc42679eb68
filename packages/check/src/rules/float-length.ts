import { allowedFloat } from "../float-limit.js";
import { allowedOfGround, eachGroundFloat } from "../measure/ground-floats.js";
import { eachLongRun } from "../measure/long-runs.js";
import { lengthInWords, limitInWords, type MeasuredLength, measuredLength } from "../measured-length.js";
import { joinFaults } from "../regions.js";
import { weftAllowances } from "../weft-allowances.js";
import { withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import { inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface FloatLengthFact extends Omit<Fact, "measured">, MeasuredLength {
  /** The side of the cloth. */
  readonly face: "face" | "back";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** The weft of the picks, where wefts are told apart. */
  readonly weft?: string;
  /** That a warp float is counted over the picks of the ground weft alone, as only another weft ties the end there. */
  readonly alone?: true;
}

/** What the page of this rule says. */
export const floatLengthPage: RulePage = {
  summary: "a float longer than allowed",
  meaning:
    "A thread passes over or under more threads of the other system than the limit allows. Floats are counted along ends and along picks, on the face and on the back, the edges of the cloth included, and over the seam where it repeats. The floats of a pattern weft have a limit of their own. Where there is one, the floats of the ends are counted over the ground weft alone too: a pattern weft that floats itself does not tie them.",
  reason:
    "Long floats catch on a ring or a cup, pull out of line in the wash and let the threads beside them slip. On the back they catch all the same.",
  mend: "Tie the float down: draw or leave another square of the figure, change the ground's step so that a binding point falls inside it, or choose a closer sett. Where long floats are wanted, raise the limit for that system or that weft.",
  limit:
    "`float: 9` (threads) or `float: 6 mm` in `limits`, or apart for `warp`, `weft` and any weft or yarn of the picks by its name: `float: { warp: 7, pattern: 9 mm }`. Usual: 6 mm at the sett; where the sett is not known, 12 threads, as if there were 20 a cm.",
  source:
    "common practice: about 6 mm in cloth that is worn or washed often, about 12 mm in cloth to look at; without a sett, 20 threads a cm are assumed",
  examples: {
    passes: [
      {
        title: "weft floats of just the limit",
        cloth: "#...#...\n..#...#.",
        options: { limits: { float: { threads: 3 } } },
      },
      {
        title: "12 picks at 20 a cm are 6 mm",
        cloth: "#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n.#.#",
        options: { sett: { endsPerCm: 20, picksPerCm: 20 } },
      },
      {
        title:
          "ends that pass two picks of the ground weft, tied by the gold one between, where 2 are allowed",
        cloth: {
          ground: {
            shafts: 2,
            threading: [1, 2],
            steps: [
              { raise: [1], sink: [2] },
              { raise: [2], sink: [1], weft: "gold" },
              { raise: [1], sink: [2] },
              { raise: [2], sink: [1], weft: "gold" },
              { raise: [2], sink: [1] },
            ],
          },
          unitEnds: 2,
          threading: [[], []],
          lifts: [[]],
          picksPerRow: 5,
        },
        options: { limits: { float: { threads: 2 } } },
      },
    ],
    fails: [
      {
        title: "one end more than the limit",
        cloth: "#....#\n..#...",
        options: { limits: { float: { threads: 3 } } },
      },
      {
        title: "12 picks at 19 a cm are longer than 6 mm",
        cloth: "#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n#.#.\n#...\n.#.#",
        options: { sett: { endsPerCm: 20, picksPerCm: 19 } },
      },
      {
        title: "ends that pass three picks of the ground weft, tied by the gold one only",
        cloth: {
          ground: {
            shafts: 2,
            threading: [1, 2],
            steps: [
              { raise: [1], sink: [2] },
              { raise: [2], sink: [1], weft: "gold" },
              { raise: [1], sink: [2] },
              { raise: [2], sink: [1], weft: "gold" },
              { raise: [1], sink: [2] },
              { raise: [2], sink: [1] },
            ],
          },
          unitEnds: 2,
          threading: [[], []],
          lifts: [[]],
          picksPerRow: 6,
        },
        options: { limits: { float: { threads: 2 } } },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace((fact: FloatLengthFact) => {
  const { alone, count = 1, face, system, weft } = fact;
  const passed = system === "warp" ? "pick" : "end";
  const length = lengthInWords(fact, passed);
  const ground = alone ? " over the ground weft, tied by another weft only" : "";
  const on = `on the ${face}${weft === undefined ? "" : ` in the weft ${weft}`}${ground}`;
  const floats =
    count === 1
      ? `${system} float of ${length} ${on}`
      : `${count} ${system} floats ${on}, the longest of ${length}`;
  return `${floats}, ${limitInWords(fact, passed)}`;
});

/** The sentence of what it finds, under its name. */
export const floatLengthSentence = { "float-length": say };

/** A float that is longer than the weaver allows, in either system and on either side of the cloth. */
export const floatLength: Rule<"float-length", FloatLengthFact> = {
  name: "float-length",
  severity: "error",
  changes: ["tie", "start-ground", "draw", "leave"],
  mends: ["ties", "starts", "floats"],
  of: anyCloth,
  *find(cloth) {
    const { warp, weft, options } = cloth;
    const allowed = allowedFloat(options, "warp");
    for (const state of [1, 0] as const) {
      const regions = joinFaults(cloth, (visit) =>
        eachLongRun(
          warp,
          state,
          () => allowed.threads,
          (end, first, last, length) => visit(end, end, first, last, length),
        ),
      );
      const face = state === 1 ? "face" : "back";
      for (const region of regions) {
        yield { ...region, ...measuredLength(region.measured, allowed), face, system: "warp" };
      }
      const allowedHere = allowedOfGround(cloth, allowed);
      const tied = joinFaults(cloth, (visit) =>
        eachGroundFloat(cloth, state, allowedHere.threads, (end, first, last, length) =>
          visit(end, end, first, last, length),
        ),
      );
      for (const region of tied) {
        yield {
          ...region,
          ...measuredLength(region.measured, allowedHere),
          face,
          system: "warp",
          alone: true,
        };
      }
    }
    for (const { allowed: allowedHere, has, name } of weftAllowances(cloth)) {
      const allowedOn = (pick: number) => (has(pick) ? allowedHere.threads : Number.POSITIVE_INFINITY);
      for (const state of [0, 1] as const) {
        const regions = joinFaults(cloth, (visit) =>
          eachLongRun(weft, state, allowedOn, (pick, first, last, length) =>
            visit(first, last, pick, pick, length),
          ),
        );
        const face = state === 0 ? "face" : "back";
        const named = name === "" ? {} : { weft: name };
        for (const region of regions) {
          yield {
            ...region,
            ...measuredLength(region.measured, allowedHere),
            face,
            system: "weft",
            ...named,
          };
        }
      }
    }
  },
  say,
  parts: inFigure,
};
