/** The lines of a picture that is written: how its pixels are stored, and each row of a grid painted in them. */
import type { Rgb } from "@drawcord/draw";
import type { BitGrid } from "@drawcord/grid";
import { packedLength, packRow } from "../pack.js";

/** A grid as lines of pixels, the filter byte not among them. */
export interface PaintedLines {
  /** Bits in a sample. */
  readonly depth: 1 | 8;
  /** Red, green, blue for each value of a sample; without a palette a pixel has three samples. */
  readonly palette?: Uint8Array;
  /** Bytes of a line. */
  readonly length: number;
  /** Paints a row of the grid into zeroes from `offset` on. */
  readonly paint: (row: number, data: Uint8Array, offset: number) => void;
}

/** A bit a pixel: the warp's colour where the grid is on, else the weft's. */
export function twoColours(grid: BitGrid, warp: Rgb, weft: Rgb, scale: number): PaintedLines {
  const line = new Uint8Array(packedLength(grid.columns));
  return {
    depth: 1,
    palette: Uint8Array.from([...weft, ...warp]),
    length: packedLength(grid.columns * scale),
    paint(row, data, offset) {
      packRow(grid, row, line, 0);
      widen(line, grid.columns, scale, data, offset);
    },
  };
}

/** Draws each bit of a packed line `scale` times. */
function widen(line: Uint8Array, columns: number, scale: number, data: Uint8Array, offset: number): void {
  if (scale === 1) {
    data.set(line, offset);
    return;
  }
  for (let column = 0; column < columns; column++) {
    if (((line[column >>> 3]! >>> (7 - (column & 7))) & 1) === 0) continue;
    for (let x = column * scale; x < (column + 1) * scale; x++) data[offset + (x >>> 3)]! |= 0x80 >>> (x & 7);
  }
}

/** A byte a pixel, or three where there are more than 256 colours: the end's where the grid is on, else the pick's. */
export function threadColours(
  grid: BitGrid,
  warp: readonly Rgb[],
  weft: readonly Rgb[],
  scale: number,
): PaintedLines {
  const colours = new Map([...warp, ...weft].map((colour) => [colour.join(), colour]));
  const places = new Map([...colours.keys()].map((key, place) => [key, place]));
  const isPalette = colours.size <= 256;
  const samplesOf = (colour: Rgb) => (isPalette ? [places.get(colour.join())!] : colour);
  const ends = warp.map(samplesOf);
  const picks = weft.map(samplesOf);
  return {
    depth: 8,
    ...(isPalette ? { palette: Uint8Array.from([...colours.values()].flat()) } : {}),
    length: grid.columns * scale * (isPalette ? 1 : 3),
    paint(row, data, offset) {
      let at = offset;
      for (let column = 0; column < grid.columns; column++) {
        const pixel = grid.get(row, column) ? ends[column]! : picks[row]!;
        for (let x = 0; x < scale; x++) for (const sample of pixel) data[at++] = sample;
      }
    },
  };
}
