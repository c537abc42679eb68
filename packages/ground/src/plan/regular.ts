import { commonDivisor, upTo } from "../arithmetic.js";
import { GroundError } from "../error.js";
import { shaftCount, soundCount } from "../size.js";
import { straight } from "../weave/orders.js";
import { type Arrangement, arrange } from "./arrange.js";
import { regularLifts, regularSinks } from "./candidates.js";

/**
 * The pair of regular orders that cuts best on `ends` ends: one shaft raised and one sunk on each pick, each order moving
 * by a step of its own, over all steps and all starts. Units and rows are whole repeats.
 * On an even number of ends it is clean all round, on an odd number it never is.
 * @param ends ends of a repeat, from 3
 * @param steps the steps allowed; left out, all that share no divisor with `ends`, twills among them
 * @throws {GroundError} `bad-ends` below 3 ends, where a shaft raised and another sunk leave none to the figure; `bad-step`
 * when none of the steps makes a pair
 * @example regularPair(8).cut.sideways.open // 0
 */
export function regularPair(ends: number, steps: readonly number[] = coprimes(ends)): Arrangement {
  if (shaftCount(soundCount(ends, "the number of ends"), "a regular pair") < 3) {
    throw new GroundError("bad-ends", `a raise and sink plan needs 3 ends or more, not ${ends}`, { ends });
  }
  const threading = straight(ends);
  const pairs = steps.map(
    (step) => arrange(threading, ends, regularLifts(ends, step), regularSinks(ends, step, steps), {})[0],
  );
  const best = pairs.reduce((a, b) => (!a || (b && openPairs(b) < openPairs(a)) ? b : a), undefined);
  if (!best) {
    throw new GroundError(
      "bad-step",
      `no pair of orders on ${ends} ends has its steps among ${steps.join(", ") || "none"}`,
      { ends },
    );
  }
  return best;
}

function coprimes(ends: number): number[] {
  return upTo(ends).filter((step) => commonDivisor(step, ends) === 1);
}

function openPairs({ cut }: Arrangement): number {
  return cut.sideways.open + cut.lengthways.open;
}
