import { lightOf } from "./light.js";
import type { Rgb } from "./rgb.js";

/**
 * Whether two colours are one.
 * @param a red, green and blue, each 0 to 255
 * @param b the colour to compare it with
 * @example isSameColour([1, 2, 3], [1, 2, 3]) // true
 */
export function isSameColour(a: Rgb, b: Rgb): boolean {
  return a.every((part, i) => part === b[i]);
}

/**
 * How far two colours are apart: the square of their distance, up to 195,075.
 * @param a red, green and blue, each 0 to 255
 * @param b the colour to compare it with
 * @example colourDistance([0, 0, 0], [255, 255, 255]) // 195075
 */
export function colourDistance(a: Rgb, b: Rgb): number {
  return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 + (a[2] - b[2]) ** 2;
}

/**
 * Whether a colour lies nearer to black than to white.
 * @param colour red, green and blue, each 0 to 255
 * @example isDark([44, 63, 102]) // true
 */
export function isDark(colour: Rgb): boolean {
  return colour.reduce((sum, part) => sum + part, 0) < 3 * 100;
}

/** Colours are told apart in grey print where one is so many times as light as the other, as WCAG 2.2 reckons contrast. */
const LEAST_CONTRAST = 1.5;

/**
 * A colour, or the nearest lighter or darker shade of it, that stands out from others in grey print: to a reader who sees
 * no colours, and to a copier.
 * Source of the contrast: WCAG 2.2, definition of contrast ratio.
 * @param colour the colour that is wished for
 * @param others the colours that are there already
 * @returns the colour itself where it stands out as it is, or where no shade of it does
 * @example toldApart([255, 255, 255], []) // [255, 255, 255]
 */
export function toldApart(colour: Rgb, others: readonly Rgb[]): Rgb {
  for (let by = 0; by <= 0.85; by += 0.05) {
    for (const shade of [shaded(colour, -by), shaded(colour, by)]) {
      if (others.every((other) => contrast(shade, other) >= LEAST_CONTRAST)) return by === 0 ? colour : shade;
    }
  }
  return colour;
}

/** How many times as light the lighter of two colours is. */
function contrast(a: Rgb, b: Rgb): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance([red, green, blue]: Rgb): number {
  return 0.2126 * lightOf(red) + 0.7152 * lightOf(green) + 0.0722 * lightOf(blue);
}

/**
 * A colour moved towards white, or towards black.
 * @param by the share of the way, from -1 (black) to 1 (white)
 * @example shaded([100, 100, 100], -0.5) // [50, 50, 50]
 */
export function shaded(colour: Rgb, by: number): Rgb {
  const to = by < 0 ? 0 : 255;
  const part = (at: 0 | 1 | 2) => Math.round(colour[at] + (to - colour[at]) * Math.abs(by));
  return [part(0), part(1), part(2)];
}
