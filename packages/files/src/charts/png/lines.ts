/** The lines of pixels in the unpacked data of a PNG file: filters undone, interlacing put in order. */
import { badPng } from "./chunks.js";

/** What the header says of the pixels. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Bits in a pixel: 1 to 64. */
  readonly bits: number;
  readonly interlaced: boolean;
}

/** One pass over the picture: its first pixel and the steps between its pixels. */
interface Pass {
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly down: number;
}

const whole: readonly Pass[] = [{ x: 0, y: 0, right: 1, down: 1 }];
/** Adam7, ISO/IEC 15948, 8.2. */
const interlaced: readonly Pass[] = [
  { x: 0, y: 0, right: 8, down: 8 },
  { x: 4, y: 0, right: 8, down: 8 },
  { x: 0, y: 4, right: 4, down: 8 },
  { x: 2, y: 0, right: 4, down: 4 },
  { x: 0, y: 2, right: 2, down: 4 },
  { x: 1, y: 0, right: 2, down: 2 },
  { x: 0, y: 1, right: 1, down: 2 },
];

/** The passes of a picture that hold pixels, with their sides. */
function passesOf({ width, height, interlaced: many }: Layout) {
  return (many ? interlaced : whole)
    .map((pass) => ({
      ...pass,
      columns: Math.max(0, Math.ceil((width - pass.x) / pass.right)),
      rows: Math.max(0, Math.ceil((height - pass.y) / pass.down)),
    }))
    .filter(({ columns, rows }) => columns > 0 && rows > 0);
}

/** Bytes of unpacked data: a filter byte and the pixels for each line of each pass. */
export function unpackedLength(layout: Layout): number {
  return passesOf(layout).reduce(
    (sum, { columns, rows }) => sum + rows * (1 + Math.ceil((columns * layout.bits) / 8)),
    0,
  );
}

/** Takes a line: its row, its first column and the step between its pixels, and the bytes of the pixels. */
export type TakeLine = (row: number, first: number, step: number, count: number, line: Uint8Array) => void;

/**
 * Undoes the filters, in place, and hands every line on. ISO/IEC 15948, 9.2.
 * @throws {FileError} `bad-chart` for a filter that there is not
 */
export function scanLines(data: Uint8Array, layout: Layout, file: string, take: TakeLine): void {
  const back = Math.max(1, layout.bits >>> 3);
  let offset = 0;
  for (const { x, y, right, down, columns, rows } of passesOf(layout)) {
    const length = Math.ceil((columns * layout.bits) / 8);
    let above: Uint8Array = new Uint8Array(length);
    for (let row = 0; row < rows; row++) {
      const filter = data[offset]!;
      if (filter > 4) throw badPng(file, `the PNG picture is damaged: there is no filter ${filter}`);
      const line = data.subarray(offset + 1, offset + 1 + length);
      unfilter(filter, line, above, back);
      take(y + row * down, x, right, columns, line);
      above = line;
      offset += 1 + length;
    }
  }
}

function unfilter(filter: number, line: Uint8Array, above: Uint8Array, back: number): void {
  if (filter === 0) return;
  for (let i = 0; i < line.length; i++) {
    const left = i < back ? 0 : line[i - back]!;
    const up = above[i]!;
    const corner = i < back ? 0 : above[i - back]!;
    const guess =
      filter === 1 ? left : filter === 2 ? up : filter === 3 ? (left + up) >>> 1 : paeth(left, up, corner);
    line[i] = line[i]! + guess;
  }
}

/** Whichever of the three neighbours is nearest to left + up - corner. */
function paeth(left: number, up: number, corner: number): number {
  const fromLeft = Math.abs(up - corner);
  const fromUp = Math.abs(left - corner);
  const fromCorner = Math.abs(left + up - 2 * corner);
  if (fromLeft <= fromUp && fromLeft <= fromCorner) return left;
  return fromUp <= fromCorner ? up : corner;
}
