import { DrawError } from "../error.js";

/** A colour as text, `#rrggbb`. */
export type Colour = `#${string}`;

/** Red, green and blue, 0 to 255 each. */
export type Rgb = readonly [red: number, green: number, blue: number];

/**
 * The parts of a colour.
 * @param colour the colour as `#rrggbb`, in small or large letters
 * @throws {DrawError} `bad-colour` for any other text
 * @example rgbOf("#b8902f") // [184, 144, 47]
 */
export function rgbOf(colour: string): Rgb {
  const rgb = parseRgb(colour);
  if (rgb !== undefined) return rgb;
  const found = `${colour}`.slice(0, 40);
  throw new DrawError("bad-colour", `a colour such as #b8860b was expected, not "${found}"`, { found });
}

/**
 * The parts of a colour, or undefined where the text is not `#rrggbb`.
 * @param text the colour, in small or large letters
 * @example parseRgb("old gold") // undefined
 */
export function parseRgb(text: string): Rgb | undefined {
  if (!/^#[\da-f]{6}$/i.test(text)) return undefined;
  const code = Number.parseInt(text.slice(1), 16);
  return [code >>> 16, (code >>> 8) & 255, code & 255];
}

/**
 * A colour as text.
 * @param rgb its parts, whole numbers
 * @example colourOf([184, 144, 47]) // "#b8902f"
 */
export function colourOf([red, green, blue]: Rgb): Colour {
  return `#${((red << 16) | (green << 8) | blue).toString(16).padStart(6, "0")}`;
}
