/**
 * A length for a drawing, to a thousandth of a millimetre: finer is never seen, and the text of a picture stays short.
 * @param value a length in mm
 * @example round(1 / 3) // 0.333
 */
export function round(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}
