import { type Colour, isSameColour, parseRgb, type Rgb } from "@drawcord/draw";
import { FileError } from "../error.js";
import { top } from "../place.js";

/** What the squares of a picture look like. */
export interface PictureOptions {
  /** Raised ends, or drawn units; default `#000000`. */
  readonly warp?: Colour;
  /** The rest; default `#ffffff`. */
  readonly weft?: Colour;
  /** Pixels along the side of a square; default 1. */
  readonly scale?: number;
}

/** The options of a picture, worked out. */
export interface PictureLook {
  readonly warp: Rgb;
  readonly weft: Rgb;
  readonly scale: number;
}

/**
 * The options of a picture with their defaults.
 * @throws {FileError} `bad-value` for a colour that is not `#rrggbb`, for two colours alike, and for a scale that is not a
 * whole number from 1 to 256
 */
export function pictureOf(options: PictureOptions, file: string): PictureLook {
  const { warp = "#000000", weft = "#ffffff", scale = 1 } = options;
  checkScale(scale, file);
  const colours = { warp: readPictureColour(warp, file), weft: readPictureColour(weft, file), scale };
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
export function readPictureColour(colour: string, file: string): Rgb {
  const rgb = parseRgb(colour);
  if (rgb !== undefined) return rgb;
  throw new FileError(
    "bad-value",
    `a colour such as #b8860b was expected, not "${colour.slice(0, 40)}"`,
    file,
    top,
  );
}
