/** A chart drawn in ink, in a picture of any colours. */

import { type Colour, colourDistance, colourOf, type Rgb } from "@drawcord/draw";
import { type BitGrid, fromCells } from "@drawcord/grid";
import { FileError } from "../../error.js";
import { needBytes } from "../../need.js";
import { top } from "../../place.js";
import { readPictureColour } from "../colours.js";
import { shownColour, squaresOf } from "./read.js";

/** How the ink of a picture is told from its paper. */
export interface InkOptions {
  /** Pixels along the side of a square; default 1. */
  readonly scale?: number;
  /** The colour of the ink; default: the picture's one colour beside its paper, or whatever is dark in a grey one. */
  readonly ink?: Colour;
  /** How light a square of a grey picture may be to count as ink, in percent; default 50. */
  readonly threshold?: number;
}

/** The most squares of a chart: 4096 by 4096. */
const mostSquares = 2 ** 24;
/** Two colours no farther apart than this are one to the eye. */
const alike = 48 ** 2;
/** Reds, greens and blues of a grey differ by no more than this. */
const greyish = 24;

/** A colour of the picture, and how many squares have it. */
interface Shade {
  readonly rgb: Rgb;
  squares: number;
}

/**
 * The grid of a chart drawn in ink: a square is drawn where its middle pixel has the colour of the ink, its lowest row
 * is row 0. In a grey picture ink is what is darker than the threshold. In a picture of colours the ink must be named,
 * unless all squares have one of two colours, of which the lighter is the paper.
 * @param bytes the whole file
 * @param file the name that errors bear
 * @param options the pixels of a square, the ink, and how dark it is
 * @throws {FileError} `no-clear-ink` when colours are left to choose from, or none of the squares has the ink; `too-large`
 * over 16 million squares; `bad-value` for options that cannot be; else as `readPng`
 * @example toText(readInkedPng(writePng(fromText("#.\n##")), "moth.png")) // "#.\n##"
 */
export function readInkedPng(bytes: Uint8Array, file: string, options: InkOptions = {}): BitGrid {
  needBytes(bytes);
  const { scale = 1, ink, threshold = 50 } = options;
  checkBetween(scale, 1, 256, "the scale", "pixels a square", file);
  checkBetween(threshold, 1, 99, "the threshold", "percent", file);
  const wanted = ink === undefined ? undefined : readPictureColour(ink, file);
  const { rows, columns, eachSquare } = squaresOf(bytes, file, scale, shownColour);
  if (rows * columns > mostSquares) {
    const sentence = `the chart has ${columns} by ${rows} squares; the most that are read is ${mostSquares}`;
    throw new FileError("too-large", sentence, file, top);
  }
  const squares = new Uint32Array(rows * columns);
  eachSquare((row, column, [red, green, blue]) => {
    squares[row * columns + column] = (Math.round(red) << 16) | (Math.round(green) << 8) | Math.round(blue);
  });
  const counts = new Map<number, number>();
  for (const colour of squares) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const isInk = inkTeller(counts, squares.length, wanted, threshold, file);
  const inked = new Set([...counts.keys()].filter((colour) => isInk(rgbOf(colour))));
  return fromCells(rows, columns, (row, column) => inked.has(squares[row * columns + column]!));
}

function checkBetween(
  found: number,
  least: number,
  most: number,
  what: string,
  of: string,
  file: string,
): void {
  if (Number.isInteger(found) && found >= least && found <= most) return;
  throw new FileError("bad-value", `${what} is ${found}; expected ${least} to ${most} ${of}`, file, top);
}

/** What tells ink from paper. */
function inkTeller(
  counts: ReadonlyMap<number, number>,
  squares: number,
  ink: Rgb | undefined,
  threshold: number,
  file: string,
): (colour: Rgb) => boolean {
  const grey = [...counts.keys()].every((colour) => {
    const rgb = rgbOf(colour);
    return Math.max(...rgb) - Math.min(...rgb) <= greyish;
  });
  if (ink === undefined && grey) return (colour) => lightness(colour) * 100 < threshold * 255;
  const shades = shadesOf(counts);
  if (ink !== undefined) {
    if (!shades.some(({ rgb }) => colourDistance(rgb, ink) <= alike)) {
      const sentence = `no square has the ink ${colourOf(ink)}; the picture has ${told(shades)}`;
      throw new FileError("no-clear-ink", sentence, file, top);
    }
    // A square belongs to the nearest colour that is more than a blur.
    const others = shades.filter(
      (shade) => shade.squares * 100 >= squares && colourDistance(shade.rgb, ink) > alike,
    );
    return (colour) => {
      const far = colourDistance(colour, ink);
      return others.every(({ rgb }) => colourDistance(colour, rgb) > far);
    };
  }
  const [first, second, ...more] = shades;
  if (first === undefined || second === undefined || more.length > 0) {
    const sentence = `the picture has no clear ink among ${told(shades)}; name the colour of the ink`;
    throw new FileError("no-clear-ink", sentence, file, top);
  }
  const [dark, light] = lightness(first.rgb) < lightness(second.rgb) ? [first, second] : [second, first];
  return (colour) => colourDistance(colour, dark.rgb) < colourDistance(colour, light.rgb);
}

/** The colours that the eye tells apart, the most used first. */
function shadesOf(counts: ReadonlyMap<number, number>): readonly Shade[] {
  const shades: Shade[] = [];
  for (const [colour, squares] of [...counts].sort(([a, m], [b, n]) => n - m || a - b)) {
    const rgb = rgbOf(colour);
    const near = shades.find((shade) => colourDistance(shade.rgb, rgb) <= alike);
    if (near === undefined) shades.push({ rgb, squares });
    else near.squares += squares;
  }
  return shades;
}

function told(shades: readonly Shade[]): string {
  const shown = shades
    .slice(0, 4)
    .map(({ rgb, squares }) => `${colourOf(rgb)} (${squares} ${squares === 1 ? "square" : "squares"})`);
  const more = shades.length > shown.length ? ` and ${shades.length - shown.length} more colours` : "";
  return `${shown.join(", ")}${more}`;
}

function rgbOf(colour: number): Rgb {
  return [colour >>> 16, (colour >>> 8) & 255, colour & 255];
}

/** As the eye weighs the parts of a colour (ITU-R BT.601), from 0 to 255. */
function lightness([red, green, blue]: Rgb): number {
  return 0.299 * red + 0.587 * green + 0.114 * blue;
}
