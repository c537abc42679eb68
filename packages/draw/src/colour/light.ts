/**
 * The light of a colour's code in a file, and back. Threads too fine to tell apart mix by their light and not by their
 * code.
 * Source of the code: IEC 61966-2-1 (sRGB), from memory.
 */
import type { Rgb } from "./rgb.js";

/**
 * The light of one part of a colour.
 * @param code 0 to 255
 * @returns 0 to 1
 * @example lightOf(188) // 0.503
 */
export function lightOf(code: number): number {
  const part = code / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
}

/**
 * The part of a colour that has that light.
 * @param light 0 to 1
 * @returns a whole number, 0 to 255
 * @example codeOf(0.5) // 188
 */
export function codeOf(light: number): number {
  return Math.round(255 * (light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055));
}

/**
 * What the eye makes of threads too fine to tell apart: their light added in the shares they show.
 * @param parts colours, each with its share; the shares need not add up to 1
 * @example mixed([[[255, 255, 255], 1], [[0, 0, 0], 1]]) // [188, 188, 188]
 */
export function mixed(parts: readonly (readonly [colour: Rgb, share: number])[]): Rgb {
  const whole = parts.reduce((sum, [, share]) => sum + share, 0);
  const part = (at: 0 | 1 | 2) =>
    codeOf(parts.reduce((sum, [colour, share]) => sum + lightOf(colour[at]) * share, 0) / whole);
  return [part(0), part(1), part(2)];
}
