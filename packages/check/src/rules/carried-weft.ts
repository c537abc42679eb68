import { many } from "@drawcord/base";
import { allowedCarry } from "../carried-limit.js";
import type { Cloth } from "../cloth.js";
import { firstSide } from "../measure/shuttles.js";
import { type AllowedLength, measuredLength } from "../measured-length.js";
import { unitsAndRows } from "../regions.js";
import { figure, withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** A weft that rests for a single pick is laid over that pick by every turn of two shuttles. */
const LEAST_REST = 2;

/** What the rule finds. */
export interface CarriedWeftFact extends Fact {
  /** The yarn that rests, or the weft where its yarn is not known. */
  readonly yarn: string;
  /** The farthest that it is carried; 0 where it is cut off every time. */
  readonly measured: number;
  /** How far it may be carried. */
  readonly limit: number;
  /** Of `measured` and `limit`: threads are picks. */
  readonly unit: "threads" | "mm";
  /** The farthest that it is carried, in picks. */
  readonly over: number;
  /** The selvedge along which it lies while it rests; `both` where it lies now on one, now on the other. */
  readonly side?: "left" | "right" | "both";
  /** How many times it rests longer, and is cut off and begun anew. */
  readonly cutOff?: number;
}

/** What the page of this rule says. */
export const carriedWeftPage: RulePage = /* @__PURE__ */ (() => ({
  summary: "a weft that rests is carried along the selvedge",
  meaning:
    "Of two shuttles or more one rests while the others are thrown, two picks or longer, and its weft lies along the selvedge until its turn comes. The finding gives the side, how often, and the longest, in picks; what rests longer than the limit counts as cut off and begun anew. Each yarn of each weft is a shuttle; all go to and fro from the side where they began.",
  reason:
    "A weft along the edge catches and shows, and draws the edge in when it is pulled; what is cut off leaves two ends to lay in.",
  mend: "Weave the carried weft in: lay it round the edge end with every second pick of the other. Make the stripes shorter, or cut the weft off. An even number of picks in each stripe keeps a weft on one side.",
  limit:
    "`carried: 3 cm` or `carried: 16` (picks) in `limits`: how far a weft may be carried. Usual: 25 mm at the picks a cm.",
  source: "common practice; the limit is Drawcord's own",
  examples: {
    passes: [
      { title: "one shuttle", cloth: "#.#.\n.#.#\n#.#.\n.#.#" },
      {
        title: "two shuttles pick and pick",
        cloth: "#.#.\n.#.#\n#.#.\n.#.#",
        options: { yarnOfPick: ["blue", "silver"] },
      },
    ],
    fails: [
      {
        title: "silver that rests while four picks of blue are thrown",
        cloth: "#.#.\n.#.#\n#.#.\n.#.#\n#.#.\n.#.#\n#.#.\n.#.#",
        options: { yarnOfPick: ["silver", "silver", "blue", "blue", "blue", "blue"] },
      },
      {
        title: "silver that rests for 6 picks, where it may be carried over 4",
        cloth: "#.#.\n.#.#\n#.#.\n.#.#\n#.#.\n.#.#\n#.#.\n.#.#",
        options: {
          limits: { carried: { picks: 4 } },
          yarnOfPick: ["silver", "blue", "blue", "blue", "blue", "blue", "blue", "silver"],
        },
      },
    ],
  },
}))();

const say = /* @__PURE__ */ withPlace(
  ({ count = 1, cutOff = 0, measured, over, side, unit, yarn, limit }: CarriedWeftFact) => {
    const most = unit === "mm" ? `${figure(limit)} mm` : many(limit, "pick");
    const far = `${many(over, "pick")}${unit === "mm" ? ` (${figure(measured)} mm)` : ""}`;
    const edge = side === "both" ? "both selvedges" : `the ${side} selvedge`;
    const carry =
      side === undefined
        ? []
        : [
            count === 1
              ? `is carried along ${edge} over ${far}`
              : `is carried along ${edge} ${count} times, up to ${far}`,
          ];
    const cut =
      cutOff === 0
        ? []
        : [`rests ${many(cutOff, "time")} for more than ${most}: it is cut off and begun anew`];
    return `the weft ${yarn} ${[...carry, ...cut].join(" and ")}`;
  },
);

/** The sentence of what it finds, under its name. */
export const carriedWeftSentence = { "carried-weft": say };

/** What must be carried along the selvedge where two shuttles or more are thrown. */
export const carriedWeft: Rule<"carried-weft", CarriedWeftFact> = {
  name: "carried-weft",
  severity: "note",
  changes: [],
  of: anyCloth,
  *find(cloth) {
    const allowed = allowedCarry(cloth.options);
    for (const { carries, cuts, name } of restsOf(cloth, allowed.threads)) {
      const all = [...carries, ...cuts].sort((a, b) => a.after - b.after);
      if (all.length === 0) continue;
      const over = carries.reduce((most, rest) => Math.max(most, rest.picks), 0);
      const picks = [all[0]!.after + 1, all.at(-1)!.after + all.at(-1)!.picks] as const;
      const sides = new Set(carries.map(({ side }) => side));
      const [side] = sides;
      yield {
        picks,
        ...unitsAndRows(cloth, undefined, picks),
        ...lengthOf(over, allowed),
        yarn: name,
        over,
        ...(side !== undefined && { side: sides.size > 1 ? "both" : side }),
        ...(carries.length > 1 && { count: carries.length }),
        ...(cuts.length > 0 && { cutOff: cuts.length }),
      };
    }
  },
  say,
  parts: () => [
    { piece: ["weft"] },
    { piece: ["wefts"] },
    ["colours", "weft"],
    ["colours", "wefts"],
    { piece: ["lifts", "order"] },
    { piece: ["ground", "steps"] },
    ["ground", "steps"],
    ["ground"],
  ],
};

/** How far it is carried, in the unit of the limit; in picks it is told besides. */
function lengthOf(
  over: number,
  allowed: AllowedLength,
): Pick<CarriedWeftFact, "measured" | "limit" | "unit"> {
  const { limit, measured, unit } = measuredLength(over, allowed);
  return { measured, limit, unit };
}

/** A rest of a shuttle: the pick before which it begins (from 0), how many picks, and where its weft lies meanwhile. */
interface Rest {
  readonly after: number;
  readonly picks: number;
  readonly side: "left" | "right";
}

/** The rests of each shuttle: those that it is carried over, and those that are too long for that. */
function restsOf(
  cloth: Cloth,
  allowed: number,
): readonly { readonly name: string; readonly carries: readonly Rest[]; readonly cuts: readonly Rest[] }[] {
  const shuttles = cloth.shuttles.map((shuttle) => ({
    name: shuttle.name,
    last: -1,
    // A weft thrown from the left lies at the right when it is through.
    atRight: firstSide(shuttle, cloth) === "right",
    carries: [] as Rest[],
    cuts: [] as Rest[],
  }));
  cloth.shuttleOfPick.forEach((of, pick) => {
    const shuttle = shuttles[of]!;
    const rest = pick - shuttle.last - 1;
    if (shuttle.last >= 0 && rest >= LEAST_REST) {
      const list = rest > allowed ? shuttle.cuts : shuttle.carries;
      list.push({ after: shuttle.last + 1, picks: rest, side: shuttle.atRight ? "right" : "left" });
    }
    shuttle.last = pick;
    shuttle.atRight = !shuttle.atRight;
  });
  return shuttles;
}
