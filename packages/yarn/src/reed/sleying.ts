import { YarnError } from "../error.js";
import { calculate } from "../formula/calculate.js";
import type { Input } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import type { Reed } from "./notation.js";
import { parseReed } from "./notation.js";
import type { Sley } from "./sley.js";
import { reedSystems } from "./systems.js";

/**
 * Dents of a reed, to a centimetre.
 * @param reed or its text
 * @throws {YarnError} as `parseReed`
 * @example convert(dentsOf("Bradford 72"), "per inch").value // 40
 */
export function dentsOf(reed: Reed | string): Result {
  const { system, count } = typeof reed === "string" ? parseReed(reed) : reed;
  const { dents, width } = reedSystems[system];
  return calculate("dents-of-reed-count", { N: count, d: dents, l: width });
}

/** A way to sley a reed, and how near it comes to the sett that was wanted. */
export interface Sleying {
  /** Ends in each dent, in turn. */
  readonly sley: Sley;
  /** The sett that it makes in the reed. */
  readonly sett: Result;
  /** How much closer than wanted, in percent of the wanted sett; below 0 it is more open. */
  readonly error: number;
}

/** How many patterns to look for. */
export interface SleyingOptions {
  /** Most dents in a pattern. Default: 8. */
  readonly longest?: number;
  /** Most patterns given. Default: 3. */
  readonly best?: number;
}

/** More ends than in any warp. */
const MOST_ENDS = 10_000_000;

/** Nearer than this to the wanted sett, a pattern is exact but for rounding. In percent. */
const EXACT = 1e-9;

/**
 * Sleying patterns for a sett in a reed: the exact one alone where there is one, else the nearest few, nearest first and
 * of equals the shortest. The ends are spread evenly over the dents of a pattern.
 * @param sett ends in a unit length that are wanted
 * @param reed the reed by its count
 * @param options how long a pattern may be, and how many are given
 * @throws {YarnError} as `parseReed`; `absurd` when more than 50 ends would crowd into a dent
 * @example sleyings("20 per inch", "12 per inch").map(({ sley }) => sley) // [[1, 2, 2]]
 */
export function sleyings(sett: Input, reed: Reed | string, options: SleyingOptions = {}): Sleying[] {
  const { longest = 8, best = 3 } = options;
  const dents = dentsOf(reed);
  const wanted = calculate("ends-in-a-dent", { S: sett, D: dents }).value;
  if (wanted > 50) {
    throw new YarnError("absurd", `that is ${Math.round(wanted)} ends in a dent; expected at most 50`, {
      ends: wanted,
    });
  }
  const found = new Map<number, Sleying>();
  for (let length = 1; length <= longest; length++) {
    for (const ends of new Set([
      Math.floor(wanted * length),
      Math.ceil(wanted * length),
      Math.round(wanted * length),
    ])) {
      const mean = ends / length;
      if (ends === 0 || found.has(mean)) continue;
      const error = (mean / wanted - 1) * 100;
      const made = calculate("sett-in-reed", { D: dents, e: mean });
      found.set(mean, { sley: spread(ends, length), sett: made, error: Math.abs(error) < EXACT ? 0 : error });
    }
  }
  const sorted = [...found.values()].sort(nearestFirst);
  return sorted[0]?.error === 0 ? sorted.slice(0, 1) : sorted.slice(0, best);
}

/** The smaller error first, and of two that differ by rounding alone the shorter pattern. */
function nearestFirst(a: Sleying, b: Sleying): number {
  const farther = Math.abs(a.error) - Math.abs(b.error);
  return Math.abs(farther) > EXACT ? farther : a.sley.length - b.sley.length;
}

/**
 * Ends spread over dents as evenly as can be, the emptier dents first.
 * @param ends how many ends, from 0
 * @param dents how many dents, from 1
 * @example spread(5, 3) // [1, 2, 2]
 */
export function spread(ends: number, dents: number): Sley {
  return Array.from(
    { length: dents },
    (_, i) => Math.floor(((i + 1) * ends) / dents) - Math.floor((i * ends) / dents),
  );
}

/**
 * Sett that a sleying pattern makes in a reed.
 * @param reed the reed by its count
 * @param sley ends in each dent, in turn
 * @example convert(settInReed("12 per inch", [1, 2, 2]), "per inch").value // 20
 */
export function settInReed(reed: Reed | string, sley: Sley): Result {
  const ends = sley.reduce((sum, one) => sum + one, 0);
  return calculate("sett-in-reed", { D: dentsOf(reed), e: ends / sley.length });
}

/**
 * Ends in each dent, first to last: the pattern over and over, the last dent with what is left.
 * @param ends how many ends, from 0
 * @param sley ends in each dent, in turn
 * @throws {YarnError} `not-whole` or `negative` when the ends are not a number of ends; `zero` when the pattern is empty; `absurd`
 * above ten million ends
 * @example endsInDents(7, [1, 2, 2]) // [1, 2, 2, 1, 1]
 */
export function endsInDents(ends: number, sley: Sley): number[] {
  if (!Number.isInteger(ends) || ends < 0) {
    const code = ends < 0 ? "negative" : "not-whole";
    throw new YarnError(code, `${ends} ends cannot be sleyed; expected a whole number`, { ends });
  }
  if (ends > MOST_ENDS) {
    throw new YarnError("absurd", `${ends} ends are more than any loom has; expected at most ${MOST_ENDS}`, {
      ends,
    });
  }
  if (!sley.some((one) => one > 0))
    throw new YarnError("zero", "a sleying pattern needs a dent with ends in it");
  const dents: number[] = [];
  for (let left = ends; left > 0; ) {
    const here = Math.min(left, sley[dents.length % sley.length]!);
    dents.push(here);
    left -= here;
  }
  return dents;
}

/** A width in a reed, by dents. */
export interface DentsUsed {
  /** Dents that the ends fill, empty ones between them counted. */
  readonly dents: number;
  /** How wide these are. */
  readonly width: Result;
}

/**
 * Dents that the ends fill (empty dents between them counted) and how wide that is.
 * @param ends how many ends
 * @param reed the reed by its count
 * @param sley ends in each dent, in turn
 * @example convert(dentsUsed(540, "5 per cm", [2]).width, "cm").value // 54
 */
export function dentsUsed(ends: number, reed: Reed | string, sley: Sley): DentsUsed {
  const dents = endsInDents(ends, sley).length;
  return { dents, width: calculate("width-of-dents", { d: dents, D: dentsOf(reed) }) };
}

/**
 * Ends in each dent as a weaver reads them: the pattern, how often it comes, and what is left.
 * @param ends how many ends
 * @param sley ends in each dent, in turn
 * @example printDents(17, [1, 2, 2]) // "(1-2-2) 3 times, then 1-1"
 */
export function printDents(ends: number, sley: Sley): string {
  const total = sley.reduce((sum, one) => sum + one, 0);
  const times = Math.floor(ends / total);
  const rest = endsInDents(ends - times * total, sley).join("-");
  const whole =
    sley.length === 1
      ? `${sley[0]} a dent in ${times} ${times === 1 ? "dent" : "dents"}`
      : `(${sley.join("-")}) ${times} ${times === 1 ? "time" : "times"}`;
  if (times === 0) return rest;
  return rest === "" ? whole : `${whole}, then ${rest}`;
}
