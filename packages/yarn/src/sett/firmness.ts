import { calculate } from "../formula/calculate.js";
import type { Result } from "../formula/work-out.js";
import { countThreads, type Drawdown } from "./interlacing.js";

/** How firmly a weave binds, counted over both systems and both faces of one repeat. */
export interface Firmness {
  /** Mean length of the floats, in threads. */
  readonly meanFloat: Result;
  /** Crossing-over firmness factor: 2 for plain weave, less for looser ones. */
  readonly crossingOver: Result;
  /** Floating-yarn factor: 0 for plain weave; with `crossingOver` it makes 2. */
  readonly floatingYarn: Result;
  /** Longest float in threads; infinite where a thread never interlaces. */
  readonly longestFloat: number;
}

/**
 * Mean float, crossing-over firmness and floating-yarn factor of a weave.
 * @param drawdown one repeat of the weave
 * @throws {YarnError} `zero` when the repeat has no threads or no thread interlaces
 * @example firmness(plain).crossingOver.value // 2
 */
export function firmness(drawdown: Drawdown): Firmness {
  const threads = [...countThreads(drawdown, "warp"), ...countThreads(drawdown, "weft")];
  const intersections = threads.reduce((sum, thread) => sum + thread.intersections, 0);
  const floating = threads.reduce((sum, thread) => sum + thread.floating, 0);
  const size = { R_1: drawdown.columns, R_2: drawdown.rows };
  return {
    meanFloat: calculate("mean-float", { R: 2 * drawdown.rows * drawdown.columns, I: intersections }),
    crossingOver: calculate("crossing-over-firmness", { c: intersections, ...size }),
    floatingYarn: calculate("floating-yarn-factor", { f: floating, ...size }),
    longestFloat: Math.max(...threads.map((thread) => thread.longest)),
  };
}
