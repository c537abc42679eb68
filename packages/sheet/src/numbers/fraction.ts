/** Eighths of an inch as a ruler shows them. */
const EIGHTHS = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

/**
 * Inches to the nearest eighth, as a weaver reads them off a ruler.
 * @param inches from 0 up
 * @example inchesText(0.7874) // "3/4 in"
 * @example inchesText(9.69) // "9 3/4 in"
 */
export function inchesText(inches: number): string {
  const eighths = Math.round(inches * 8);
  const whole = Math.floor(eighths / 8);
  const part = EIGHTHS[eighths % 8]!;
  if (part === "") return `${whole} in`;
  return `${whole === 0 ? "" : `${whole} `}${part} in`;
}
