import { colourDistance, type Rgb } from "@drawcord/draw";
import { BitGrid } from "@drawcord/grid";
import { needBytes } from "../../need.js";
import { checkFileSize } from "../../text.js";
import { type PictureLook, type PictureOptions, pictureOf } from "../colours.js";
import { badPng } from "./chunks.js";
import { type PngParts, readParts } from "./header.js";
import { inflate } from "./inflate.js";
import { scanLines, unpackedLength } from "./lines.js";

// Read by our own: for 8 by 8 pixels fast-png 8.0.0 unpacks 1 MB to 2 GB, and pngjs 7.0.0 brings Node down at sides of 2^31.
/**
 * The grid of a PNG picture of any kind, its top row woven last: a square is raised where its middle pixel is nearer in
 * colour to the warp than to the weft. What is transparent shows white.
 * @param bytes the whole file
 * @param file the name that errors bear
 * @param options the pixels of a square, and the colours of warp and weft
 * @throws {FileError} `too-large` over 16 MiB; `bad-chart` when the picture is damaged, too large to unpack, or its sides
 * are not whole numbers of squares at the scale; `bad-value` for options that cannot be
 * @example toText(readPng(writePng(fromText("#.\n##"), { scale: 8 }), "moth.png", { scale: 8 })) // "#.\n##"
 */
export function readPng(bytes: Uint8Array, file: string, options: PictureOptions = {}): BitGrid {
  needBytes(bytes);
  const picture = pictureOf(options, file);
  const { rows, columns, eachSquare } = squaresOf(bytes, file, picture.scale, (colour) =>
    isRaised(colour, picture),
  );
  const stride = Math.ceil(columns / 32);
  const words = new Uint32Array(rows * stride);
  eachSquare((row, column, raised) => {
    if (raised) words[row * stride + (column >>> 5)]! |= 1 << (column & 31);
  });
  return BitGrid.own(rows, columns, words);
}

/** The squares of a picture, each seen by its middle pixel; row 0 is the lowest. */
export interface PngSquares<Seen> {
  readonly rows: number;
  readonly columns: number;
  /** Unpacks the picture and visits every square, in the order of the file. */
  readonly eachSquare: (visit: (row: number, column: number, seen: Seen) => void) => void;
}

/**
 * The squares of a PNG picture, before it is unpacked.
 * @param scale pixels along the side of a square
 * @param see what is made of the colour of a square
 * @throws {FileError} as `readPng`, for the picture
 */
export function squaresOf<Seen>(
  bytes: Uint8Array,
  file: string,
  scale: number,
  see: (colour: Rgba) => Seen,
): PngSquares<Seen> {
  checkFileSize(bytes.length, file);
  const parts = readParts(bytes, file);
  const { width, height } = parts;
  if (width % scale !== 0 || height % scale !== 0) {
    throw badPng(
      file,
      `the picture has ${width} by ${height} pixels, which do not make whole squares of ${scale}`,
    );
  }
  const rows = height / scale;
  const middle = scale >>> 1;
  return {
    rows,
    columns: width / scale,
    eachSquare: (visit) => {
      const seen = pixelReader(parts, see);
      const data = inflate(parts.squares, unpackedLength(parts), file);
      scanLines(data, parts, file, (y, first, step, count, line) => {
        if (y % scale !== middle) return;
        for (let i = 0; i < count; i++) {
          const x = first + i * step;
          if (x % scale === middle)
            visit(rows - 1 - (y - middle) / scale, (x - middle) / scale, seen(line, i));
        }
      });
    },
  };
}

/** What is seen of a pixel of a line. */
type PixelReader<Seen> = (line: Uint8Array, pixel: number) => Seen;

function pixelReader<Seen>(parts: PngParts, see: (colour: Rgba) => Seen): PixelReader<Seen> {
  const { depth, kind } = parts;
  const bytes = depth >>> 3;
  if (kind === "palette" || (kind === "grey" && depth <= 8)) {
    const known = Array.from({ length: 2 ** depth }, (_, value) => see(entryColour(parts, value)));
    return (line, pixel) => known[sampleAt(line, pixel, depth)]!;
  }
  // Of a sample of 16 bits the first byte is enough to tell the colour.
  const at = (line: Uint8Array, pixel: number, samples: number, which: number) =>
    line[(pixel * samples + which) * bytes]!;
  const clear = (line: Uint8Array, pixel: number, samples: number) =>
    isClear(parts, line, pixel * samples * bytes);
  switch (kind) {
    case "grey":
      return (line, pixel) => {
        const grey = at(line, pixel, 1, 0);
        return see([grey, grey, grey, clear(line, pixel, 1) ? 0 : 255]);
      };
    case "grey-alpha":
      return (line, pixel) => {
        const grey = at(line, pixel, 2, 0);
        return see([grey, grey, grey, at(line, pixel, 2, 1)]);
      };
    case "rgb":
      return (line, pixel) =>
        see([
          at(line, pixel, 3, 0),
          at(line, pixel, 3, 1),
          at(line, pixel, 3, 2),
          clear(line, pixel, 3) ? 0 : 255,
        ]);
    case "rgb-alpha":
      return (line, pixel) =>
        see([at(line, pixel, 4, 0), at(line, pixel, 4, 1), at(line, pixel, 4, 2), at(line, pixel, 4, 3)]);
  }
}

/** A sample of 1, 2, 4 or 8 bits. */
function sampleAt(line: Uint8Array, pixel: number, depth: number): number {
  const bit = pixel * depth;
  return (line[bit >>> 3]! >>> (8 - depth - (bit & 7))) & (2 ** depth - 1);
}

/** A colour as it is stored; what is transparent shows white. */
export type Rgba = readonly [red: number, green: number, blue: number, alpha: number];

/** The colour that a value of a palette or a grey of up to 8 bits stands for. */
function entryColour({ kind, depth, palette, transparency }: PngParts, value: number): Rgba {
  if (kind === "palette") {
    // A value past the palette is an error of the file; it shows white.
    const [red = 255, green = 255, blue = 255] = palette.subarray(3 * value, 3 * value + 3);
    return [red, green, blue, transparency[value] ?? 255];
  }
  const grey = Math.round((value * 255) / (2 ** depth - 1));
  const clear = transparency.length >= 2 && transparency[0]! * 256 + transparency[1]! === value;
  return [grey, grey, grey, clear ? 0 : 255];
}

/** Whether a pixel has the one colour that `tRNS` makes transparent; its samples there are of 16 bits. */
function isClear({ transparency, depth }: PngParts, line: Uint8Array, from: number): boolean {
  if (transparency.length < 2) return false;
  for (let i = 0; i < transparency.length / 2; i++) {
    const wide = depth === 16;
    const sample = wide ? line[from + 2 * i]! * 256 + line[from + 2 * i + 1]! : line[from + i]!;
    if (sample !== transparency[2 * i]! * 256 + transparency[2 * i + 1]!) return false;
  }
  return true;
}

/** A colour laid on white. */
export function shownColour([red, green, blue, alpha]: Rgba): Rgb {
  const shown = (part: number) => (part * alpha + 255 * (255 - alpha)) / 255;
  return [shown(red), shown(green), shown(blue)];
}

/** Whether a colour, laid on white, is nearer to the warp's than to the weft's. */
function isRaised(colour: Rgba, { warp, weft }: PictureLook): boolean {
  const shown = shownColour(colour);
  return colourDistance(shown, weft) > colourDistance(shown, warp);
}
