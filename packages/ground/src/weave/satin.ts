import { commonDivisor, modulo, upTo } from "../arithmetic.js";
import { GroundError } from "../error.js";
import { shaftCount, soundCount } from "../size.js";

/**
 * The steps that make a satin on `ends` ends: those that share no divisor with it, 1 and `ends` - 1 (the twills) left out.
 * Step k and step `ends` - k are each other's mirror, so both twist directions are there.
 * @param ends ends of a repeat, from 1
 * @throws {GroundError} `bad-size` when `ends` is no whole number of at least 1
 * Source: A. Wolfensberger, Theory of Silk Weaving, 1921, p. 33.
 * @example satinSteps(8) // [3, 5]
 */
export function satinSteps(ends: number): number[] {
  return upTo(soundCount(ends, "the number of ends")).filter(
    (step) => step > 1 && step < ends - 1 && commonDivisor(step, ends) === 1,
  );
}

/**
 * The order of the regular satin: the end bound on each pick, the first pick on end `start`.
 * @param ends ends of a repeat
 * @param step ends by which the binding point moves on a pick, one of `satinSteps`
 * @param start the end bound on the first pick, from 1; 1 by default
 * @throws {GroundError} `bad-step` when no satin has that step
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 223-225.
 * @example satinOrder(8, 3) // [1, 4, 7, 2, 5, 8, 3, 6]
 */
export function satinOrder(ends: number, step: number, start = 1): number[] {
  const steps = satinSteps(shaftCount(ends, `a satin on ${ends} ends`));
  if (!steps.includes(step)) {
    const sentence =
      steps.length === 0
        ? noSatin(ends)
        : `${wrongStep(ends, step)}; the steps of a satin on ${ends} ends are ${steps.join(", ")}`;
    throw new GroundError("bad-step", sentence, { ends, step });
  }
  return upTo(ends).map((pick) => modulo(start - 1 + pick * step, ends) + 1);
}

/**
 * Orders of the satins that no constant step makes: on 4 ends the broken twill, on 6 ends the handbooks' irregular ones.
 * @param ends ends of a repeat
 * @returns the orders, the usual one first; none on any other number of ends
 * Source: J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 223-225; A. Wolfensberger, Theory of Silk Weaving, 1921, p. 34.
 * @example irregularSatins(4) // [[1, 2, 4, 3]]
 */
export function irregularSatins(ends: number): number[][] {
  if (ends === 4) return [[1, 2, 4, 3]];
  if (ends !== 6) return [];
  return [
    [1, 3, 5, 2, 6, 4],
    [1, 4, 2, 6, 3, 5],
    [1, 3, 6, 4, 2, 5],
  ];
}

function wrongStep(ends: number, step: number): string {
  const divisor = commonDivisor(step, ends);
  if (step > 1 && step < ends && divisor > 1) {
    return `step ${step} on ${ends} ends leaves ends unbound, for both are divisible by ${divisor}`;
  }
  return step === 1 || step === ends - 1
    ? `step ${step} on ${ends} ends is a twill`
    : `a satin on ${ends} ends cannot have the step ${step}`;
}

/** Why there is no satin of any step on so many ends, and what stands in for it. */
function noSatin(ends: number): string {
  const none = `no step makes a satin on ${ends} ${ends === 1 ? "end" : "ends"}`;
  if (ends === 4) return `${none}; "broken twill" stands in for it`;
  if (ends === 6) return `${none}; "satin 6" is the irregular one`;
  return `${none}; the least is "satin 5"`;
}
