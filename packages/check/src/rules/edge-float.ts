import { allowedCarry } from "../carried-limit.js";
import type { Cloth } from "../cloth.js";
import { allowedFloat } from "../float-limit.js";
import { firstSide } from "../measure/shuttles.js";
import { lengthInWords, limitInWords, type MeasuredLength, measuredLength } from "../measured-length.js";
import type { Side } from "../put-together.js";
import { joinFaults, type VisitFault } from "../regions.js";
import { withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import { atSelvedge, inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** What the rule finds. */
export interface EdgeFloatFact extends Omit<Fact, "measured">, MeasuredLength {
  /** The side on which a weft floats; left out for an edge end. */
  readonly face?: "face" | "back";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** The weft of the picks, where wefts are told apart. */
  readonly weft?: string;
  /** The side from which the first pick comes, which says where the wefts turn; left out for a weft. */
  readonly firstPickFrom?: Side;
}

/** What the page of this rule says. */
export const edgeFloatPage: RulePage = {
  summary:
    "a weft float that continues round the turn at the selvedge, or an edge end that no turn of the weft catches",
  meaning:
    "Where the weft turns, the outermost ends lie on the same side of it on both picks, so that the float at the end of one pick continues into the next, and together they are longer than the limit. Or the outermost end lies on the same side of both picks at every turn on its edge, for a longer stretch than a warp float may be: the weft turns without going round it.",
  reason:
    "The turn is not held: the edge end hangs free, the loop catches, and the edge draws in or frays although every single float is short enough. An end that no turn catches can be drawn out of the edge sideways, however well it interlaces.",
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
      {
        title: "2/2 twill whose right edge is caught by no turn for 8 picks, where 8 are allowed",
        cloth: "##..\n.##.\n..##\n#..#\n##..\n.##.\n..##\n#..#",
        options: { limits: { float: { threads: 8 } } },
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
      {
        title: "the same for 10 picks, where 8 are allowed",
        cloth: "..##\n#..#\n##..\n.##.\n..##\n#..#\n##..\n.##.\n..##\n#..#",
        options: { limits: { float: { threads: 8 } } },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace((fact: EdgeFloatFact) => {
  const { count = 1, ends, face, firstPickFrom, system, weft } = fact;
  const passed = system === "warp" ? "pick" : "end";
  const length = lengthInWords(fact, passed);
  const most = limitInWords(fact, passed);
  if (system === "warp") {
    const edge = ends?.[0] === 1 ? "left" : "right";
    const upTo = count === 1 ? "" : "up to ";
    return `the end at the ${edge} edge is caught by no turn of the weft for ${upTo}${length}, ${most}, when the first pick comes from the ${firstPickFrom}`;
  }
  const of = `on the ${face}${weft === undefined ? "" : ` in the weft ${weft}`}`;
  const floats = count === 1 ? "weft float" : `${count} weft floats`;
  const long = count === 1 ? `of ${length}` : `the longest of ${length}`;
  return `${floats} ${of}, ${long}, ${count === 1 ? "continues" : "continue"} round the turn at the selvedge, ${most}`;
});

/** The sentence of what it finds, under its name. */
export const edgeFloatSentence = { "edge-float": say };

/** What the weft's turns do not hold at the edges: a float that runs round into the next pick, an end that none catches. */
export const edgeFloat: Rule<"edge-float", EdgeFloatFact> = {
  name: "edge-float",
  severity: "warning",
  changes: ["selvedge", "start-ground", "draw", "leave"],
  mends: ["selvedges", "starts", "any squares"],
  of: anyCloth,
  *find(cloth) {
    const turns = cloth.shuttles.map((_, shuttle) => turnsOf(cloth, shuttle));
    for (const [index, shuttle] of cloth.shuttles.entries()) {
      const weft = cloth.wefts[shuttle.weft]!;
      const isApart = Object.hasOwn(cloth.options.limits?.floatOfWeft ?? {}, shuttle.name);
      const allowed = allowedFloat(cloth.options, "weft", isApart ? shuttle.name : weft);
      for (const state of [0, 1] as const) {
        const regions = joinFaults(cloth, (visit) =>
          eachLongTurn(cloth, turns[index]!, state, allowed.threads, visit),
        );
        for (const region of regions) {
          yield {
            ...region,
            ...measuredLength(region.measured, allowed),
            face: state === 0 ? "face" : "back",
            system: "weft",
            ...(weft !== "" && { weft }),
          };
        }
      }
    }
    const allowed = allowedFloat(cloth.options, "warp");
    // Those of several shuttles are woven in between one another.
    const woven = turns.length === 1 ? turns[0]! : turns.flat().sort((a, b) => a.after - b.after);
    for (const atRight of [false, true]) {
      const regions = joinFaults(cloth, (visit) =>
        eachFreeEnd(cloth, woven, atRight, allowed.threads, visit),
      );
      for (const region of regions) {
        yield {
          ...region,
          ...measuredLength(region.measured, allowed),
          system: "warp",
          firstPickFrom: cloth.options.firstPickFrom ?? "left",
        };
      }
    }
  },
  say,
  parts: (fact) => (fact.system === "warp" ? atSelvedge(fact) : inFigure(fact)),
};

/** A turn of a weft: the two picks that it joins (from 0), and the edge at which it lies. */
interface Turn {
  readonly before: number;
  readonly after: number;
  readonly atRight: boolean;
}

/** The turns of one shuttle, in the order in which they are woven; a weft that rests too long is cut off, and turns not. */
function turnsOf(cloth: Cloth, shuttle: number): Turn[] {
  const turns: Turn[] = [];
  const { threads: carried } = allowedCarry(cloth.options);
  let atRight = firstSide(cloth.shuttles[shuttle]!, cloth) !== "right";
  let before = -1;
  cloth.shuttleOfPick.forEach((of, after) => {
    if (of !== shuttle) return;
    if (before !== -1) {
      if (after - before - 1 <= carried) turns.push({ before, after, atRight });
      atRight = !atRight;
    }
    before = after;
  });
  return turns;
}

/** Visits the turns of one shuttle at which two floats of one state meet that are short enough apart, but not together. */
function eachLongTurn(
  cloth: Cloth,
  turns: readonly Turn[],
  state: 0 | 1,
  allowed: number,
  visit: VisitFault,
): void {
  const { grid, joined } = cloth.weft;
  if (joined) return;
  for (const { before, after, atRight } of turns) {
    const one = edgeRun(cloth, before, atRight, state);
    const other = edgeRun(cloth, after, atRight, state);
    if (one === 0 || other === 0 || one > allowed || other > allowed || one + other <= allowed) continue;
    const reach = Math.max(one, other);
    const first = atRight ? grid.columns - reach : 0;
    visit(first, first + reach - 1, before, after, one + other);
  }
}

/**
 * Visits the stretches over which the outermost end is caught by no turn at its edge, because it lies on the same side of
 * both picks of every one, though it interlaces: where it does not, it floats, which is told as that.
 */
function eachFreeEnd(
  cloth: Cloth,
  turns: readonly Turn[],
  atRight: boolean,
  allowed: number,
  visit: VisitFault,
): void {
  const { grid, joined } = cloth.weft;
  if (joined || grid.columns === 0) return;
  const end = atRight ? grid.columns - 1 : 0;
  let caught = 0;
  const tell = (free: readonly Turn[]) => {
    if (free.length === 0) return;
    // A shuttle that rested meanwhile begins its turn before others have caught the end.
    const first = Math.max(caught, free[0]!.before);
    const last = free.at(-1)!.after;
    if (last + 1 - first > allowed && interlaces(cloth, end, first, last)) {
      visit(end, end, first, last, last + 1 - first);
    }
  };
  let free: Turn[] = [];
  for (const turn of turns) {
    if (turn.atRight !== atRight) continue;
    if (grid.get(turn.before, end) === grid.get(turn.after, end)) free.push(turn);
    else {
      tell(free);
      free = [];
      caught = turn.after;
    }
  }
  tell(free);
}

function interlaces({ weft }: Cloth, end: number, first: number, last: number): boolean {
  for (let pick = first + 1; pick <= last; pick++) {
    if (weft.grid.get(pick, end) !== weft.grid.get(first, end)) return true;
  }
  return false;
}

/** How many ends from an edge on are of the state; most are few. */
function edgeRun({ weft: { grid } }: Cloth, pick: number, atRight: boolean, state: 0 | 1): number {
  const { columns, stride, words } = grid;
  const base = pick * stride;
  const step = atRight ? -1 : 1;
  let end = atRight ? columns - 1 : 0;
  let length = 0;
  while (length < columns && ((words[base + (end >>> 5)]! >>> (end & 31)) & 1) === state) {
    end += step;
    length++;
  }
  return length;
}
