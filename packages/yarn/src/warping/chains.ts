import { calculate } from "../formula/calculate.js";
import type { Result } from "../formula/work-out.js";

/** How a warp is wound. */
export interface WarpingOptions {
  /** Threads wound together, held apart as pairs or fours by the cross: 2 for a 2x2 cross, 4 for a 4x4 cross. Default: 2. */
  readonly threads?: 2 | 4;
  /** Double passes (once down and once back) taken off as one chain. Default: 20. */
  readonly doublePassesInAChain?: number;
}

/** A warp as it is wound. */
export interface Warping {
  /** Threads wound at once. */
  readonly threads: number;
  /** The cross at the end, such as `2x2`. */
  readonly cross: string;
  /** Times that the threads go from end to end. */
  readonly passes: Result;
  /** Times that they go there and back. */
  readonly doublePasses: Result;
  /** Chains that the warp is taken off in. */
  readonly chains: Result;
  /** Ends in each chain, first to last. */
  readonly endsInChains: readonly number[];
  /** Threads wound in the last pass that the warp does not need. */
  readonly spare: number;
}

/**
 * Passes, double passes and chains of a warp wound with several threads at once.
 * @param ends of the warp
 * @param options threads wound at once, and double passes in a chain
 * @throws {YarnError} `not-whole`, `zero` or `negative`, naming what is wrong
 * @example chains(540, { threads: 4 }).endsInChains // [160, 160, 160, 60]
 */
export function chains(ends: number, options: WarpingOptions = {}): Warping {
  const { threads = 2, doublePassesInAChain = 20 } = options;
  const passes = calculate("passes-of-warp", { n: ends, t: threads });
  const doublePasses = calculate("double-passes-of-passes", { p: passes });
  const number = calculate("chains-of-double-passes", { P: doublePasses, b: doublePassesInAChain });
  const whole = doublePassesInAChain * 2 * threads;
  return {
    threads,
    cross: `${threads}x${threads}`,
    passes,
    doublePasses,
    chains: number,
    endsInChains: Array.from({ length: number.value }, (_, i) => Math.min(whole, ends - i * whole)),
    spare: passes.value * threads - ends,
  };
}
