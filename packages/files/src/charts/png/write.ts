import type { BitGrid } from "@drawcord/grid";
import { zlibSync } from "fflate";
import { FileError } from "../../error.js";
import { top } from "../../place.js";
import { type PictureOptions, pictureOf } from "../colours.js";
import { packedLength, packRow } from "../pack.js";
import { writeChunks } from "./chunks.js";

/** The most bytes of pixels, packed, that a picture is written with. */
const mostPacked = 2 ** 28;

/**
 * A PNG picture of a grid in two colours, its last row on top, each square `scale` pixels wide and high.
 * @throws {FileError} `bad-value` for options that cannot be; `too-large` for more than 2^31 pixels, or no squares
 * @example [...writePng(fromText("#."))].slice(1, 4) // [80, 78, 71]
 */
export function writePng(grid: BitGrid, options: PictureOptions = {}): Uint8Array {
  const { warp, weft, scale } = pictureOf(options, "picture");
  const width = grid.columns * scale;
  const height = grid.rows * scale;
  const length = 1 + packedLength(width);
  if (width === 0 || height === 0 || height * length > mostPacked) {
    const sentence = `a picture of ${width} by ${height} pixels cannot be written`;
    throw new FileError("too-large", sentence, "picture", top);
  }
  const data = new Uint8Array(height * length);
  const line = new Uint8Array(packedLength(grid.columns));
  for (let row = 0; row < grid.rows; row++) {
    const from = (grid.rows - 1 - row) * scale * length;
    packRow(grid, row, line, 0);
    widen(line, grid.columns, scale, data, from + 1);
    for (let k = 1; k < scale; k++) data.copyWithin(from + k * length, from, from + length);
  }
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header.set([1, 3], 8); // One bit a pixel, colours from a palette.
  return writeChunks([
    { type: "IHDR", data: header },
    { type: "PLTE", data: Uint8Array.from([...weft, ...warp]) },
    { type: "IDAT", data: zlibSync(data) },
  ]);
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
