import type { Mistake } from "./mistake.js";

/** A number that a mistake would have given. */
export interface NumberSlip {
  readonly value: number;
  readonly mistake: Mistake;
}

/** Centimetres in an inch, by definition. */
const INCH = 2.54;

/**
 * The mistake that explains a wrong number exactly, the nearest first; undefined where none does.
 * @param wrong what stands there
 * @param right what would agree
 * @param slips what known mistakes would have given, in the unit of both
 * @param within how far off an exact explanation may be
 */
export function likelyMistake(
  wrong: number,
  right: number,
  slips: readonly NumberSlip[],
  within: number,
): Mistake | undefined {
  const known: readonly NumberSlip[] = [
    ...slips,
    { value: right / INCH, mistake: { mistake: "inches-for-centimetres" } },
    { value: right * INCH, mistake: { mistake: "centimetres-for-inches" } },
    { value: right / 10, mistake: { mistake: "centimetres-for-millimetres" } },
    { value: right * 10, mistake: { mistake: "millimetres-for-centimetres" } },
  ];
  return known.find(({ value }) => Math.abs(value - wrong) <= within + 1e-9 * Math.abs(wrong))?.mistake;
}
