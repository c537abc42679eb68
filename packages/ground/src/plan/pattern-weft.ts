import { commonMultiple } from "../arithmetic.js";
import type { PatternTies } from "../description/description.js";
import { GroundError } from "../error.js";
import type { Ground, GroundStep, ShaftSet } from "../types.js";

/** More ends or picks than a repeat of a tied ground may take. */
const MOST_THREADS = 4096;

/** Ends from one tie to the next where neither the longest float nor the size of a unit says it. */
const USUAL_ENDS = 4;

/** The longest float that is usual, in ends: 6 mm at 20 a cm (common practice). */
const USUAL_FLOAT = 12;

/** What the ties of a pattern weft go by. */
export interface TieSize {
  readonly unitEnds?: number | undefined;
  /** The longest float, in ends, where nothing is said of the ties; 12 by default. */
  readonly longestFloat?: number | undefined;
}

/**
 * A ground with a pattern weft: after each of its picks one that leaves the shafts to the figure, but for those that tie
 * the weft. On each of these picks one tie shaft goes up, so that the weft is held down where it lies on the face, and
 * another goes down, so that it is held where it lies on the back; they change in turn from one such pick to the next.
 * @param ground a ground whose every pick covers every shaft
 * @param ties how the weft is tied; in halves when left out, so that no float is longer than `longestFloat`
 * @param size ends in a unit: each unit then holds a tie, where nothing else is said
 * @throws {GroundError} `bad-size` for ties that the ground cannot have, `too-large` past 4096 ends or picks in the repeat
 */
export function withPatternWeft(
  ground: Ground,
  ties: PatternTies | undefined,
  { longestFloat = USUAL_FLOAT, unitEnds = USUAL_ENDS }: TieSize,
): Ground {
  if (ties === undefined) {
    const apart = Math.max(1, Math.min(unitEnds, Math.floor((longestFloat + 1) / 2)));
    return tiedByTurns(ground, 2, apart);
  }
  if (ties.in === "none") return laidIn(ground, [{ raise: [], sink: [], weft: "pattern" }]);
  if (ties.in === "shafts") return laidIn(ground, tiedPicks(namedShafts(ties.shafts, ground.shafts)));
  const shafts = ties.in === "twill" ? ties.shafts : ties.in === "halves" ? 2 : 3;
  if (shafts < 2) {
    throw new GroundError("bad-size", `a weft is tied in turn by ${shafts} shaft; expected two or more`, {
      shafts,
    });
  }
  const apart = ties.within === undefined ? unitEnds : Math.floor((ties.within + 1) / shafts);
  if (apart < 1) {
    throw new GroundError(
      "bad-size",
      `${shafts} tie shafts in turn leave floats of ${shafts - 1} ends or more; ${ties.within} are asked for`,
      { shafts, within: ties.within! },
    );
  }
  return tiedByTurns(ground, shafts, apart);
}

/** Every so many ends one that hangs on a tie shaft, each tie shaft in turn. */
function tiedByTurns(ground: Ground, ties: number, apart: number): Ground {
  const ends = commonMultiple(ground.threading.length, apart * ties);
  checkRepeat(ends, "ends");
  const added: { readonly base: number; readonly tie: number }[] = [];
  const threading = Array.from({ length: ends }, (_, end) => {
    const base = ground.threading[end % ground.threading.length]!;
    if (end % apart !== Math.floor(apart / 2)) return base;
    const tie = Math.floor(end / apart) % ties;
    const known = added.findIndex((shaft) => shaft.base === base && shaft.tie === tie);
    return ground.shafts + (known < 0 ? added.push({ base, tie }) : known + 1);
  });
  const follow = (set: ShaftSet) => [
    ...set,
    ...added.flatMap(({ base }, i) => (set.includes(base) ? [ground.shafts + i + 1] : [])),
  ];
  const tied = tiedPicks(
    Array.from({ length: ties }, (_, tie) =>
      added.flatMap((shaft, i) => (shaft.tie === tie ? [ground.shafts + i + 1] : [])),
    ),
  );
  const used = new Set(threading);
  return withoutIdle(
    laidIn(
      {
        shafts: ground.shafts + added.length,
        threading,
        steps: ground.steps.map(({ raise, sink, ...step }) => ({
          ...step,
          raise: follow(raise),
          sink: follow(sink),
        })),
      },
      tied,
    ),
    used,
  );
}

/** On each pick one tie up and the one half a turn on down. */
function tiedPicks(ties: readonly ShaftSet[]): readonly GroundStep[] {
  const half = Math.floor(ties.length / 2);
  return ties.map((raise, i) => ({ raise, sink: ties[(i + half) % ties.length]!, weft: "pattern" }));
}

function namedShafts(named: readonly number[], shafts: number): readonly ShaftSet[] {
  const above = named.find((shaft) => shaft < 1 || shaft > shafts);
  if (named.length < 2 || above !== undefined || new Set(named).size < named.length) {
    const found = above === undefined ? `shafts ${named.join(" ")}` : `shaft ${above}`;
    throw new GroundError(
      "bad-size",
      `the pattern weft is tied on ${found}; expected two or more of the ground's ${shafts} shafts, each once`,
      { shafts },
    );
  }
  return named.map((shaft) => [shaft]);
}

/** After each pick of the ground one of the pattern weft, these in turn. */
function laidIn(ground: Ground, pattern: readonly GroundStep[]): Ground {
  const picks = commonMultiple(ground.steps.length, pattern.length);
  checkRepeat(2 * picks, "picks");
  const steps = Array.from({ length: picks }, (_, i) => [
    ground.steps[i % ground.steps.length]!,
    pattern[i % pattern.length]!,
  ]).flat();
  return { ...ground, steps };
}

/** The shafts that ends hang on, numbered without gaps. */
function withoutIdle(ground: Ground, used: ReadonlySet<number>): Ground {
  const kept = Array.from({ length: ground.shafts }, (_, i) => i + 1).filter((shaft) => used.has(shaft));
  const number = new Map(kept.map((shaft, i) => [shaft, i + 1]));
  const renamed = (set: ShaftSet) => set.flatMap((shaft) => number.get(shaft) ?? []);
  return {
    shafts: kept.length,
    threading: ground.threading.map((shaft) => number.get(shaft)!),
    steps: ground.steps.map((step) => ({ ...step, raise: renamed(step.raise), sink: renamed(step.sink) })),
  };
}

function checkRepeat(found: number, things: "ends" | "picks"): void {
  if (found <= MOST_THREADS) return;
  const sentence = `the tied ground repeats after ${found} ${things}; the most worked out is ${MOST_THREADS}`;
  throw new GroundError("too-large", sentence, { found, most: MOST_THREADS });
}
