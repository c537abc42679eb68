import type { Cloth } from "../cloth.js";
import { takeUpLimit } from "../limits/take-up.js";
import { unitsAndRows } from "../regions.js";
import type { Span } from "../report.js";
import { figure, figureBeyond, withPlace } from "../words.js";
import { anyCloth } from "./needs.js";
import { inFigure } from "./parts.js";
import type { Fact, Rule, RulePage } from "./rule.js";

/** A smaller difference than this is an accident of where the cloth begins and ends. */
const LEAST_DIFFERENCE = 2;

/** What the rule finds. */
export interface UnevenTakeUpFact extends Fact {
  /** What was measured, in `unit` where there is one. */
  readonly measured: number;
  /** What is allowed, in the unit of `measured`. */
  readonly limit: number;
  /** Of `measured` and `limit`. */
  readonly unit: "percent";
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
}

/** What the page of this rule says. */
export const unevenTakeUpPage: RulePage = {
  summary: "threads that interlace more or less often than the others",
  meaning:
    "Over the width of a unit, or the height of a row, the threads change sides more often or less often than the average of their system. Of the picks, those of the ground weft are compared; a pattern weft floats as its figure wants.",
  reason:
    "Every intersection takes up yarn. Ends that interlace less often go slack beside the others, ends that interlace more often go tight and break; picks make the cloth cockle.",
  mend: "Spread the figure so that every unit is drawn about as often as its neighbours, choose a ground for the selvedge that interlaces as the cloth does, or give those ends a beam or a weight of their own. No change of squares mends ends that weave another ground all along, as static units and selvedges may. Drawcord proposes up to eight squares to change; more than that would be another figure, and that is yours to draw.",
  limit:
    "`uneven: 20 %` in `limits`. Usual: 15 %; a difference of less than two intersections is never reported.",
  source: "common practice; the limit is Drawcord's own",
  examples: {
    passes: [
      {
        title: "plain weave throughout",
        cloth: "#.#.#.#.\n.#.#.#.#\n#.#.#.#.\n.#.#.#.#\n#.#.#.#.\n.#.#.#.#",
      },
      {
        title: "four ends that change 40 % less often than the average, where 40 % is allowed",
        cloth: "#.#.#.#.\n.#.##.#.\n#.#..#.#\n.#.#.#.#\n#.#.#.#.\n.#.##.#.\n#.#..#.#\n.#.#.#.#",
        options: { limits: { takeUp: 40 } },
      },
    ],
    fails: [
      {
        title: "four ends that change 40 % less often than the average, where 39 % is allowed",
        cloth: "#.#.#.#.\n.#.##.#.\n#.#..#.#\n.#.#.#.#\n#.#.#.#.\n.#.##.#.\n#.#..#.#\n.#.#.#.#",
        options: { limits: { takeUp: 39 } },
      },
    ],
  },
};

const say = /* @__PURE__ */ withPlace(({ system, measured, limit }: UnevenTakeUpFact) => {
  const [threads, others] = system === "warp" ? ["ends", "end"] : ["picks", "pick"];
  const [how, go] = measured < 0 ? ["less", "go slack"] : ["more", "draw in"];
  return `${threads} that interlace ${figureBeyond(Math.abs(measured), limit)} % ${how} often than the average ${others}; they may ${go}, where ${figure(limit)} % is allowed`;
});

/** The sentence of what it finds, under its name. */
export const unevenTakeUpSentence = { "uneven-take-up": say };

/** Threads that interlace much more or much less often than the rest of their system. */
export const unevenTakeUp: Rule<"uneven-take-up", UnevenTakeUpFact> = {
  name: "uneven-take-up",
  severity: "warning",
  changes: ["selvedge", "tie", "draw", "leave"],
  mends: ["selvedges", "ties", "any squares"],
  of: anyCloth,
  *find(cloth) {
    const { squares, warp, weft, weftOfPick, wefts } = cloth;
    const tolerance = cloth.options.limits?.takeUp ?? takeUpLimit.usual;
    const ends = meansOf(warp.count, squares.columns, (end) => [squares.ofEnd[end]!, changesOf(warp, end)]);
    yield* stretches(ends, tolerance).map((stretch) => factOf(cloth, "warp", stretch, tolerance));
    const ground = wefts.indexOf("");
    const picks = meansOf(weft.count, squares.rows, (pick) =>
      weftOfPick[pick] === ground ? [squares.ofPick[pick]!, changesOf(weft, pick)] : undefined,
    );
    yield* stretches(picks, tolerance).map((stretch) => factOf(cloth, "weft", stretch, tolerance));
  },
  say,
  parts: inFigure,
};

/** A stretch of threads (from 0) and the furthest that a square of it lies from the mean, in percent. */
interface TakeUpStretch {
  readonly first: number;
  readonly last: number;
  readonly deviation: number;
}

/** The mean intersections of the threads on each square, in order, and of all threads. */
interface Means {
  readonly all: number;
  readonly squares: readonly { readonly first: number; readonly last: number; readonly mean: number }[];
}

function changesOf({ kinds, threads }: Cloth["warp"], thread: number): number {
  return threads.changes[kinds.kindOf[thread]!]!;
}

function meansOf(
  threads: number,
  squares: number,
  look: (thread: number) => readonly [square: number, changes: number] | undefined,
): Means {
  const first = new Int32Array(squares).fill(-1);
  const last = new Int32Array(squares);
  const sums = new Float64Array(squares);
  const counts = new Int32Array(squares);
  for (let thread = 0; thread < threads; thread++) {
    const seen = look(thread);
    if (seen === undefined) continue;
    const [square, changes] = seen;
    if (first[square] === -1) first[square] = thread;
    last[square] = thread;
    sums[square]! += changes;
    counts[square]!++;
  }
  const sum = sums.reduce((a, b) => a + b, 0);
  const count = counts.reduce((a, b) => a + b, 0);
  return {
    all: count === 0 ? 0 : sum / count,
    squares: Array.from(sums, (total, square) => ({
      first: first[square]!,
      last: last[square]!,
      mean: total / counts[square]!,
    })).filter((square) => square.first !== -1),
  };
}

/** Neighbouring squares that lie further than the tolerance to the same side of the mean, joined. */
function stretches({ all, squares }: Means, tolerance: number): TakeUpStretch[] {
  const found: TakeUpStretch[] = [];
  let joins = false;
  for (const { first, last, mean } of squares) {
    const deviation = (100 * (mean - all)) / all;
    const before = found.at(-1);
    // A deviation of just the limit passes, whatever the last binary digit says.
    if (!(Math.abs(deviation) > tolerance + 1e-9 && Math.abs(mean - all) >= LEAST_DIFFERENCE)) {
      joins = false;
    } else if (joins && before !== undefined && before.deviation < 0 === deviation < 0) {
      const worst = Math.abs(deviation) > Math.abs(before.deviation) ? deviation : before.deviation;
      found[found.length - 1] = { first: before.first, last, deviation: worst };
    } else {
      found.push({ first, last, deviation });
      joins = true;
    }
  }
  return found;
}

function factOf(
  cloth: Cloth,
  system: "warp" | "weft",
  { first, last, deviation }: TakeUpStretch,
  limit: number,
): UnevenTakeUpFact {
  const threads: Span = [first + 1, last + 1];
  const place = system === "warp" ? { ends: threads } : { picks: threads };
  return {
    ...place,
    ...unitsAndRows(cloth, place.ends, place.picks),
    measured: deviation,
    limit,
    unit: "percent",
    system,
  };
}
