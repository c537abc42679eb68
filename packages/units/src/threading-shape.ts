import { UnitsError } from "./error.js";
import { sameShafts } from "./shaft-sets.js";
import { unitText } from "./threading-print.js";
import type { UnitShafts } from "./types.js";

type Threading = readonly UnitShafts[];

/** A threading taken apart: `left`, then `start`, `times` whole repeats, `end`, then `right`. */
export interface ThreadingShape {
  /** The border on the left, outside what repeats. */
  readonly left: Threading;
  /** The tail of a repeat before the first whole one. */
  readonly start: Threading;
  /** What repeats; the whole middle when nothing does. */
  readonly repeat: Threading;
  /** How many whole repeats there are. */
  readonly times: number;
  /** The head of a repeat after the last whole one. */
  readonly end: Threading;
  /** The border on the right. */
  readonly right: Threading;
}

/** Repeats longer than this many units are not looked for. */
const LONGEST_REPEAT = 2000;

/**
 * Takes a threading apart into borders and repeats: of all stretches that repeat an order of unlike units, the longest;
 * of its repeats the shortest, begun where it reads best. Where less than half of the drawn units repeat, static units
 * on either side are the borders and the rest is one repeat.
 * @param threading an entry a unit, unit 1 first
 * @example threadingShape(parseThreading("X 9 (1-3 2)*4 1 9 X")).times // 4
 */
export function threadingShape(threading: Threading): ThreadingShape {
  const ranks = rankUnits(threading);
  const stretch = longestRepeating(ranks);
  const drawn = threading.filter((unit) => unit.length > 0).length;
  if (stretch === undefined || 2 * (stretch.to - stretch.from) < drawn) return unrepeated(threading);
  const { from, to, period } = stretch;
  const lead = bestStart(ranks, stretch);
  const times = Math.floor((to - from - lead) / period);
  const start = from + lead;
  const end = start + times * period;
  return {
    left: threading.slice(0, from),
    start: threading.slice(from, start),
    repeat: threading.slice(start, start + period),
    times,
    end: threading.slice(end, to),
    right: threading.slice(to),
  };
}

/**
 * The threading mended to a number of units: its borders stand, its repeat comes as often as it fits whole, and what is
 * left over is shared to both sides as the tail of a repeat on the left and the head of one on the right.
 * @param threading the order as it stands, an entry a unit
 * @param units how many units it is to have
 * @throws {UnitsError} `bad-size` when `units` leaves no room for the borders and one whole repeat
 * @example printThreading(mendThreading(parseThreading("(1-4 3-2)*3"), 23)) // "3 2 1-3 (4-2 1-3)*3"
 */
export function mendThreading(threading: Threading, units: number): Threading {
  const { left, repeat, right } = threadingShape(threading);
  const least = left.length + repeat.length + right.length;
  if (!Number.isSafeInteger(units) || units < least) {
    throw new UnitsError(
      "bad-size",
      `${units} units are wanted; borders of ${left.length} and ${right.length} units and one repeat of ${repeat.length} take ${least}`,
      { units, least, left: left.length, repeat: repeat.length, right: right.length },
    );
  }
  const room = units - left.length - right.length;
  const times = Math.floor(room / repeat.length);
  const over = room - times * repeat.length;
  const tail = Math.floor(over / 2);
  return [
    ...left,
    ...repeat.slice(repeat.length - tail),
    ...Array.from({ length: times }, () => repeat).flat(),
    ...repeat.slice(0, over - tail),
    ...right,
  ];
}

/** Entries `from` to `to` (past the last), each like the one `period` further on. */
interface UnitStretch {
  readonly from: number;
  readonly to: number;
  readonly period: number;
}

/** The place of each unit among the units told apart, by their shafts, static units last. */
function rankUnits(threading: Threading): readonly number[] {
  const told = new Map(threading.map((unit) => [unitText(unit), unit]));
  const isBefore = (a: UnitShafts, b: UnitShafts) => {
    const at = a.findIndex((shaft, i) => shaft !== b[i]);
    return at < 0 ? a.length - b.length : a[at]! - (b[at] ?? 0);
  };
  const order = [...told].sort(([, a], [, b]) => {
    return Number(a.length === 0) - Number(b.length === 0) || isBefore(a, b);
  });
  const ranks = new Map(order.map(([text], rank) => [text, rank]));
  return threading.map((unit) => ranks.get(unitText(unit))!);
}

/** The longest stretch that repeats an order of unlike units twice or more; of two as long the shorter repeat. */
function longestRepeating(ranks: readonly number[]): UnitStretch | undefined {
  let best: UnitStretch | undefined;
  for (let period = 2; period <= Math.min(LONGEST_REPEAT, ranks.length / 2); period++) {
    let from = 0;
    for (let i = 0; i + period <= ranks.length; i++) {
      if (ranks[i] === ranks[i + period]) continue; // past the last unit nothing is alike
      const to = i + period;
      const longest = best === undefined ? 0 : best.to - best.from;
      if (to - from >= 2 * period && to - from > longest && isUnlike(ranks, from, to))
        best = { from, to, period };
      from = i + 1;
    }
  }
  return best;
}

function isUnlike(ranks: readonly number[], from: number, to: number): boolean {
  for (let i = from + 1; i < to; i++) if (ranks[i] !== ranks[from]) return true;
  return false;
}

/**
 * How far into a stretch its repeat begins best: at the order that comes first by shaft number, so that a point begins
 * at its lowest shaft, as long as two whole repeats are left.
 */
function bestStart(ranks: readonly number[], { from, to, period }: UnitStretch): number {
  const most = Math.min(period - 1, to - from - 2 * period);
  let best = 0;
  for (let lead = 1; lead <= most; lead++) {
    let i = 0;
    while (i < period && ranks[from + lead + i] === ranks[from + best + i]) i++;
    if (i < period && ranks[from + lead + i]! < ranks[from + best + i]!) best = lead;
  }
  return best;
}

/** A threading without repeats: static borders, and between them one repeat, or one unit again and again. */
function unrepeated(threading: Threading): ThreadingShape {
  const isDrawn = (unit: UnitShafts) => unit.length > 0;
  const from = Math.max(0, threading.findIndex(isDrawn));
  const last = threading.findLastIndex(isDrawn);
  const to = last < 0 ? threading.length : last + 1;
  const middle = threading.slice(from, to);
  const alike = middle.every((unit) => sameShafts(unit, middle[0]!));
  return {
    left: threading.slice(0, from),
    start: [],
    repeat: alike ? middle.slice(0, 1) : middle,
    times: alike ? middle.length : 1,
    end: [],
    right: threading.slice(to),
  };
}
