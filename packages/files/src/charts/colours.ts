import { FileError } from "../error.js";
import { top } from "../place.js";

/** A colour as `#rrggbb`. */
export type Colour = `#${string}`;

/** What the squares of a picture look like. */
export interface PictureOptions {
  /** Raised ends, or drawn units; default `#000000`. */
  readonly warp?: Colour;
  /** The rest; default `#ffffff`. */
  readonly weft?: Colour;
  /** Pixels along the side of a square; default 1. */
  readonly scale?: number;
}

/** Red, green and blue from 0 to 255. */
export type Rgb = readonly [red: number, green: number, blue: number];

/** The options of a picture, worked out. */
export interface Picture {
  readonly warp: Rgb;
  readonly weft: Rgb;
  readonly scale: number;
}

/**
 * The options of a picture with their defaults.
 * @throws {FileError} `bad-value` for a colour that is not `#rrggbb`, for two colours alike, and for a scale that is not a
 * whole number from 1 to 256
 */
export function pictureOf(options: PictureOptions, file: string): Picture {
  const { warp = "#000000", weft = "#ffffff", scale = 1 } = options;
  checkScale(scale, file);
  const colours = { warp: readColour(warp, file), weft: readColour(weft, file), scale };
  if (isSameColour(colours.warp, colours.weft)) {
    const sentence = `warp and weft both have the colour ${warp}; they must differ`;
    throw new FileError("bad-value", sentence, file, top);
  }
  return colours;
}

/** @throws {FileError} `bad-value` for a scale that is not a whole number from 1 to 256 */
export function checkScale(scale: number, file: string): void {
  if (Number.isInteger(scale) && scale >= 1 && scale <= 256) return;
  throw new FileError("bad-value", `the scale is ${scale}; expected 1 to 256 pixels a square`, file, top);
}

/**
 * A colour from its text.
 * @throws {FileError} `bad-value` when it is not `#rrggbb`
 */
export function readColour(colour: string, file: string): Rgb {
  const [, red, green, blue] = /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})$/i.exec(colour) ?? [];
  if (red === undefined || green === undefined || blue === undefined) {
    throw new FileError(
      "bad-value",
      `a colour such as #b8860b was expected, not "${colour.slice(0, 40)}"`,
      file,
      top,
    );
  }
  return [Number.parseInt(red, 16), Number.parseInt(green, 16), Number.parseInt(blue, 16)];
}

/** The text of a colour. */
export function colourOf([red, green, blue]: Rgb): Colour {
  return `#${((red << 16) | (green << 8) | blue).toString(16).padStart(6, "0")}`;
}

export function isSameColour(a: Rgb, b: Rgb): boolean {
  return a.every((part, i) => part === b[i]);
}

/** How far two colours are apart: the square of their distance, up to 195,075. */
export function colourDistance(a: Rgb, b: Rgb): number {
  return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 + (a[2] - b[2]) ** 2;
}
