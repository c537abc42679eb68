/**
 * A number rounded to decimals, a half always up. A half that only rounding on the way has made a little less is a half:
 * 632.5 comes to 633 in whatever units it was worked out.
 * @param decimals from 0 to 15
 * @example roundHalf(2.675, 2) // 2.68
 */
export function roundHalf(value: number, decimals: number): number {
  if (!Number.isFinite(value)) return value;
  const whole = 10 ** decimals;
  const scaled = value * whole;
  // Beyond this there are no decimals left to round.
  if (Math.abs(scaled) > Number.MAX_SAFE_INTEGER) return value;
  return Math.floor(scaled + 0.5 + 1e-9 + 1e-12 * Math.abs(scaled)) / whole;
}
