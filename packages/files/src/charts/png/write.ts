import { type Colour, colourOf, isSameColour, type Rgb } from "@drawcord/draw";
import { type BitGrid, needGrid } from "@drawcord/grid";
import { zlibSync } from "fflate";
import { FileError } from "../../error.js";
import { top } from "../../place.js";
import { checkScale, readPictureColour } from "../colours.js";
import { writeChunks } from "./chunks.js";
import { type PaintedLines, threadColours, twoColours } from "./painted.js";

/** What the file is called that is being written, in errors. */
const FILE = "picture";
/** The most bytes of pixels, packed, that a picture is written with. */
const mostPacked = 2 ** 28;

/** What a picture of a cloth looks like. */
export interface ClothPictureOptions {
  /** The colour of the raised ends (or drawn units), one for all or one for each, end 1 first; default `#000000`. */
  readonly warp?: Colour | readonly Colour[];
  /** The colour of the picks, one for all or one for each, pick 1 first; default `#ffffff`. */
  readonly weft?: Colour | readonly Colour[];
  /** Pixels along the side of a square; default 1. */
  readonly scale?: number;
}

/**
 * A PNG picture of a grid, its last row on top, each square `scale` pixels wide and high, in the colour of its end where
 * it is raised and of its pick where it is not.
 * @param grid rows are picks, row 0 woven first and drawn lowest
 * @param options the pixels of a square, and the colours of the threads
 * @throws {FileError} `bad-value` for options that cannot be, one colour everywhere among them; `too-large` for more than
 * 2^28 bytes of pixels (eight a byte in two colours, else one), or no squares
 * @example [...writePng(fromText("#."))].slice(1, 4) // [80, 78, 71]
 */
export function writePng(grid: BitGrid, options: ClothPictureOptions = {}): Uint8Array {
  needGrid(grid);
  const { scale = 1 } = options;
  checkScale(scale, FILE);
  const { palette, depth, length, paint } = paintedLines(grid, options, scale);
  const line = 1 + length;
  const width = grid.columns * scale;
  const height = grid.rows * scale;
  if (width === 0 || height === 0 || height * line > mostPacked) {
    const sentence = `a picture of ${width} by ${height} pixels cannot be written`;
    throw new FileError("too-large", sentence, FILE, top);
  }
  const data = new Uint8Array(height * line);
  for (let row = 0; row < grid.rows; row++) {
    const from = (grid.rows - 1 - row) * scale * line;
    paint(row, data, from + 1);
    for (let k = 1; k < scale; k++) data.copyWithin(from + k * line, from, from + line);
  }
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header.set([depth, palette === undefined ? 2 : 3], 8); // Colours by themselves, or from a palette.
  return writeChunks([
    { type: "IHDR", data: header },
    ...(palette === undefined ? [] : [{ type: "PLTE", data: palette }]),
    { type: "IDAT", data: zlibSync(data) },
  ]);
}

function paintedLines(grid: BitGrid, options: ClothPictureOptions, scale: number): PaintedLines {
  const ends = eachColour(options.warp ?? "#000000", grid.columns, "ends");
  const picks = eachColour(options.weft ?? "#ffffff", grid.rows, "picks");
  const warp = oneOf(ends);
  const weft = oneOf(picks);
  if (warp === undefined || weft === undefined) return threadColours(grid, ends, picks, scale);
  if (isSameColour(warp, weft)) {
    const sentence = `warp and weft both have the colour ${colourOf(warp)}; they must differ`;
    throw new FileError("bad-value", sentence, FILE, top);
  }
  return twoColours(grid, warp, weft, scale);
}

/** The colour of each thread, from one for all or one for each. */
function eachColour(colours: Colour | readonly Colour[], threads: number, what: string): readonly Rgb[] {
  const given = (typeof colours === "string" ? [colours] : colours).map((colour) =>
    readPictureColour(colour, FILE),
  );
  if (given.length === threads) return given;
  if (given.length === 1) return Array<Rgb>(threads).fill(given[0]!);
  const sentence = `${given.length} colours are given for ${threads} ${what}; expected one, or one for each`;
  throw new FileError("bad-value", sentence, FILE, top);
}

/** The colour that all have, if they have one. */
function oneOf(colours: readonly Rgb[]): Rgb | undefined {
  const [first] = colours;
  return first !== undefined && colours.every((colour) => isSameColour(colour, first)) ? first : undefined;
}
