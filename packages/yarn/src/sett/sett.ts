import { countIn, tex, type YarnInput } from "../count/tex.js";
import { calculate } from "../formula/calculate.js";
import type { Input } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";
import type { Quantity } from "../quantity/units.js";
import { diametersByRoot, type RootOptions } from "./diameter.js";
import type { Interlacing } from "./interlacing.js";

/**
 * Closest sett of a weave from the yarns, or wraps, that lie side by side.
 * @param wraps yarns, or wraps, that lie side by side in a unit length
 * @param weave threads and intersections of the weave
 * @example convert(settOfWraps("32 per inch", { threads: 4, intersections: 2 }), "per inch").value // 21.33
 */
export function settOfWraps(wraps: Input, { threads, intersections }: Interlacing): Result {
  return calculate("sett-of-weave", { D: wraps, R: threads, I: intersections });
}

/**
 * Closest sett of a weave by the root rule.
 * @param yarn the yarn by its count, or in tex
 * @param weave threads and intersections of the weave
 * @param options the fibre, or the constant k in its place
 * @throws {YarnError} as `diametersByRoot`
 * @example convert(settByRoot("20/2 Ne", { threads: 2, intersections: 2 }, { k: 0.9 }), "per inch").value // 41.24
 */
export function settByRoot(yarn: YarnInput, weave: Interlacing, options: RootOptions = {}): Result {
  return settOfWraps(diametersByRoot(yarn, options), weave);
}

/** Constants of Brierley's formula. */
export interface BrierleyOptions {
  /** Exponent of the kind of weave. Default: 0.39 (twill), shown as assumed. */
  readonly m?: number;
  /** Constant of the yarn. Default: 200 (cotton counts), shown as assumed. */
  readonly K?: number;
}

/**
 * Closest sett of a weave by Brierley.
 * @param yarn the yarn by its count, or in tex
 * @param weave threads and intersections of the weave
 * @param options Brierley's constants for yarn and weave
 * @throws {YarnError} as `tex`; `zero` when the weave does not interlace
 * @example convert(settByBrierley("60 tex", { threads: 4, intersections: 2 }), "per inch").value // 58.1
 */
export function settByBrierley(yarn: YarnInput, weave: Interlacing, options: BrierleyOptions = {}): Result {
  const F = calculate("mean-float", { R: weave.threads, I: weave.intersections });
  return calculate("sett-by-brierley", { F, m: options.m, K: options.K, N: countIn(yarn, "cotton") });
}

/**
 * A known good sett carried over to another weave of the same yarn.
 * @param sett the sett that is known to be good
 * @param from threads and intersections of the weave that it is of
 * @param to threads and intersections of the other weave
 * @example convert(settInAnotherWeave("103 per inch", { threads: 2, intersections: 2 }, { threads: 4, intersections: 2 }), "per inch").value // 137.33
 */
export function settInAnotherWeave(sett: Input, from: Interlacing, to: Interlacing): Result {
  return calculate("sett-in-another-weave", {
    S_1: sett,
    I_1: from.intersections,
    R_1: from.threads,
    I_2: to.intersections,
    R_2: to.threads,
  });
}

/**
 * A known good sett carried over to another yarn in the same weave.
 * @param sett the sett that is known to be good
 * @param from the yarn that it is of
 * @param to the other yarn
 * @example convert(settInAnotherYarn("78 per inch", "32 Ne", "60 Ne"), "per inch").value // 106.8
 */
export function settInAnotherYarn(sett: Input, from: YarnInput, to: YarnInput): Result {
  return calculate("sett-in-another-yarn", { S_1: sett, T_1: tex(from), T_2: tex(to) });
}

/**
 * Cover factor of one system, by cotton counts and inches.
 * @param sett ends or picks in a unit length
 * @param yarn the yarn of the system
 * @example coverFactor("56 per inch", "4 Ne").value // 28
 */
export function coverFactor(sett: Input, yarn: YarnInput): Result {
  return calculate("cover-factor", { S: sett, N: countIn(yarn, "cotton") });
}

/**
 * Share that a sett is of the closest one, in percent.
 * @param sett the sett that is asked about
 * @param closest the closest sett of the same yarn and weave
 * @example shareOfClosest("30 per inch", settOfWraps("80 per inch", { threads: 2, intersections: 2 })).value // 75
 */
export function shareOfClosest(sett: Input, closest: Input): Result {
  return calculate("share-of-closest-sett", { S: sett, S_m: closest });
}

/** Words for how firm a cloth is, by the share of the closest sett below which each holds. */
const firmnessWords = [
  [50, "flimsy: the threads will slip"],
  [65, "open, for lace and scarves"],
  [75, "soft, with a good drape"],
  [85, "a balanced working sett"],
  [95, "firm, for hard wear"],
  [100, "very firm, hard to beat in"],
] as const;

/**
 * Plain words for how firm a cloth is. Source: a working sett of 80 % is common practice; the other limits and the
 * words are Drawcord's own.
 * @param share of the closest sett, in percent
 * @example firmnessInWords({ value: 80, unit: "%", kind: "share" }) // "a balanced working sett"
 */
export function firmnessInWords(share: Quantity): string {
  const found = firmnessWords.find(([most]) => share.value < most);
  return found === undefined ? "closer than the yarn allows: it will not beat in" : found[1];
}
