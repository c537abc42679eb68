import { GroundError } from "../error.js";
import type { Ratio } from "./ratio.js";

/**
 * The ratio and step of the warp corkscrew: an uneven number of ends, each up for one pick more than it is down, next
 * ends half a repeat apart, so that two twill lines wind about each other and both faces are warp.
 * @returns the ratio along the pick, and the ends by which it moves on every pick
 * @throws {GroundError} `bad-ends` for an even number of ends, or fewer than 5
 * Common practice.
 * @example corkscrew(7) // { ratio: [2, 1, 1, 1, 1, 1], step: 2 }
 */
export function corkscrew(ends: number): { ratio: Ratio; step: number } {
  if (ends < 5 || ends % 2 === 0) {
    throw new GroundError(
      "bad-ends",
      `a corkscrew needs an uneven number of ends, at least 5, not ${ends}; ${Math.max(5, ends + 1)} would do`,
      { ends },
    );
  }
  return { ratio: [2, ...Array.from({ length: ends - 2 }, () => 1)], step: 2 };
}
