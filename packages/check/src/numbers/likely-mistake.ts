import type { Mistake } from "./mistake.js";

/** A number that a mistake would have given. */
export interface NumberSlip {
  readonly value: number;
  readonly mistake: Mistake;
}

/** Centimetres in an inch, by definition. */
const INCH = 2.54;

/** What a number comes to where it was written or read in another unit than was meant. */
export function slipsOfUnits(right: number): readonly NumberSlip[] {
  return [
    { value: right / INCH, mistake: { mistake: "inches-for-centimetres" } },
    { value: right * INCH, mistake: { mistake: "centimetres-for-inches" } },
    { value: right / 10, mistake: { mistake: "centimetres-for-millimetres" } },
    { value: right * 10, mistake: { mistake: "millimetres-for-centimetres" } },
  ];
}

/**
 * What follows from one of two numbers that are compared where inches stand for centimetres in one of them, or the other way
 * round: which of the two is wrong cannot be told.
 * @param follows what follows from the number so many times as large
 */
export function slipsOfInches(follows: (times: number) => number): readonly NumberSlip[] {
  return [INCH, 1 / INCH].map((times) => ({
    value: follows(times),
    mistake: { mistake: "inches-and-centimetres" },
  }));
}

/**
 * The mistake that explains a wrong number exactly, of several the one that comes nearest; undefined where none does.
 * @param wrong what stands there
 * @param slips what known mistakes would have given, in the unit of `wrong`
 * @param within how far off an exact explanation may be
 */
export function likelyMistake(
  wrong: number,
  slips: readonly NumberSlip[],
  within: number,
): Mistake | undefined {
  const exact = 1e-9 * Math.abs(wrong);
  const off = ({ value }: NumberSlip) => Math.abs(value - wrong);
  let best: NumberSlip | undefined;
  for (const slip of slips) {
    if (off(slip) > within + exact) continue;
    if (best === undefined || off(slip) < off(best) - exact) best = slip;
  }
  return best?.mistake;
}
