import { calculate } from "../formula/calculate.js";
import type { Result } from "../formula/work-out.js";

/** How a warp is wound. */
export interface WarpingOptions {
  /** Threads wound together, held apart as pairs or fours by the cross: 2 for a 2x2 cross, 4 for a 4x4 cross. Default: 2. */
  readonly threads?: 2 | 4;
  /** Portees (a pass down and a pass back) chained off as one bout. Default: 20. */
  readonly porteesInABout?: number;
}

/** A warp as it is wound. */
export interface Warping {
  readonly threads: number;
  readonly cross: string;
  readonly passes: Result;
  readonly portees: Result;
  readonly bouts: Result;
  /** Ends in each bout, first to last. */
  readonly endsInBouts: readonly number[];
  /** Threads wound in the last pass that the warp does not need. */
  readonly spare: number;
}

/**
 * Passes, portees and bouts of a warp wound with several threads at once.
 * @param ends of the warp
 * @throws {YarnError} `not-whole`, `zero` or `negative`, naming what is wrong
 * @example bouts(564, { threads: 4 }).endsInBouts // [160, 160, 160, 84]
 */
export function bouts(ends: number, options: WarpingOptions = {}): Warping {
  const { threads = 2, porteesInABout = 20 } = options;
  const passes = calculate("passes-of-warp", { n: ends, t: threads });
  const portees = calculate("portees-of-passes", { p: passes });
  const number = calculate("bouts-of-portees", { P: portees, b: porteesInABout });
  const whole = porteesInABout * 2 * threads;
  return {
    threads,
    cross: `${threads}x${threads}`,
    passes,
    portees,
    bouts: number,
    endsInBouts: Array.from({ length: number.value }, (_, i) => Math.min(whole, ends - i * whole)),
    spare: passes.value * threads - ends,
  };
}
