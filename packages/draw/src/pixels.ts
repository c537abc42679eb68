import { type BitGrid, crop, needGrid } from "@drawcord/grid";
import { codeOf, lightOf } from "./colour/light.js";
import type { Rgb } from "./colour/rgb.js";
import { DrawError } from "./error.js";
import { type DrawOptions, ordersOf, scaleOf, viewOf } from "./options.js";

/** A picture as a canvas takes it: `new ImageData(data, width)`. */
export interface Pixels {
  /** Pixels in a line. */
  readonly width: number;
  /** Lines; the first is the top of the picture, where the last pick lies. */
  readonly height: number;
  /** Red, green, blue and opacity (always 255) of each pixel, line after line. */
  readonly data: Uint8ClampedArray<ArrayBuffer>;
}

/** The most pixels of one picture: 16,384 by 8,192, half a gigabyte. */
const MOST_PIXELS = 2 ** 27;

/**
 * The picture of a cloth, thread by thread, the first pick at the bottom: the colour of its end where the end lies on
 * top, else the colour of its pick. Where threads are finer than a pixel, the pixel has the colour that they mix to.
 * @param grid rows are picks, columns are ends, a bit is 1 where the end lies on top
 * @param options colours, scale and the part that is drawn
 * @throws {DrawError} `bad-colour`, `bad-scale`, and `too-large` for more than 134,217,728 pixels
 * @throws {GridError} `outside` for a view that does not lie inside the grid
 * @example drawPixels(fromText("#."), { scale: 2 }).data.slice(0, 4) // [0, 0, 0, 255]
 */
export function drawPixels(grid: BitGrid, options: DrawOptions = {}): Pixels {
  needGrid(grid);
  const orders = ordersOf(options);
  const scale = scaleOf(options);
  const view = viewOf(options, grid);
  const seen = options.view === undefined ? grid : crop(grid, view);
  const width = sizeOf(seen.columns, scale);
  const height = sizeOf(seen.rows, scale);
  if (width * height > MOST_PIXELS) {
    const sentence = `the picture has ${width} by ${height} pixels; the most that are drawn is ${MOST_PIXELS}`;
    throw new DrawError("too-large", sentence, { width, height, most: MOST_PIXELS });
  }
  const threads: Threads = {
    ends: turned(orders.warp, view.column, seen.columns),
    picks: turned(orders.weft, view.row, seen.rows),
  };
  const data = new Uint8ClampedArray(width * height * 4);
  if (scale >= 1) drawSquares(seen, threads, data, width, height);
  else drawMixed(seen, threads, data, width, height);
  return { width, height, data };
}

/** The colour of each thread that is seen. */
interface Threads {
  readonly ends: readonly Rgb[];
  readonly picks: readonly Rgb[];
}

/** Pixels along threads that are side by side; none only where there are no threads. */
function sizeOf(threads: number, scale: number): number {
  return threads === 0 ? 0 : Math.max(1, Math.round(threads * scale));
}

/** An order of colours over threads, the first of which is thread `from` of the cloth. */
function turned(order: readonly Rgb[], from: number, threads: number): readonly Rgb[] {
  return Array.from({ length: threads }, (_, i) => order[(from + i) % order.length]!);
}

/** Where part `i` of `parts` begins on a line of `length`, so that every part has its share and none overlap. */
function start(i: number, parts: number, length: number): number {
  return Math.floor((i * length) / parts);
}

/** A pixel or more a thread: each line of pixels is painted once and copied for the lines that are like it. */
function drawSquares(
  { rows, columns, stride, words }: BitGrid,
  { ends, picks }: Threads,
  data: Uint8ClampedArray<ArrayBuffer>,
  width: number,
  height: number,
): void {
  const pixels = new Uint32Array(data.buffer);
  const warp = ends.map(packed);
  const weft = picks.map(packed);
  const starts = Array.from({ length: columns + 1 }, (_, column) => start(column, columns, width));
  const line = new Uint32Array(width);
  for (let row = 0; row < rows; row++) {
    const lowered = weft[row]!;
    for (let column = 0; column < columns; column++) {
      const bit = (words[row * stride + (column >>> 5)]! >>> (column & 31)) & 1;
      const colour = bit === 1 ? warp[column]! : lowered;
      for (let x = starts[column]!; x < starts[column + 1]!; x++) line[x] = colour;
    }
    const fromTop = rows - 1 - row;
    const end = start(fromTop + 1, rows, height);
    for (let y = start(fromTop, rows, height); y < end; y++) pixels.set(line, y * width);
  }
}

/** A colour as one word in the order of bytes that this machine has. */
function packed([red, green, blue]: Rgb): number {
  return new Uint32Array(Uint8Array.of(red, green, blue, 255).buffer)[0]!;
}

/** Several threads a pixel: their light is added up and shared out. */
function drawMixed(
  { rows, columns, stride, words }: BitGrid,
  { ends, picks }: Threads,
  data: Uint8ClampedArray<ArrayBuffer>,
  width: number,
  height: number,
): void {
  const warp = Float64Array.from(ends.flatMap((colour) => colour.map(lightOf)));
  const pixelOf = Uint32Array.from({ length: columns }, (_, column) =>
    Math.floor(((column + 1) * width - 1) / columns),
  );
  const endsIn = new Uint32Array(width);
  for (const pixel of pixelOf) endsIn[pixel]!++;
  for (let y = 0; y < height; y++) {
    const light = new Float64Array(width * 3);
    const first = start(height - 1 - y, height, rows);
    const last = start(height - y, height, rows);
    for (let row = first; row < last; row++) {
      const [red = 0, green = 0, blue = 0] = picks[row]!.map(lightOf);
      for (let column = 0; column < columns; column++) {
        const to = pixelOf[column]! * 3;
        if (((words[row * stride + (column >>> 5)]! >>> (column & 31)) & 1) === 1) {
          light[to]! += warp[column * 3]!;
          light[to + 1]! += warp[column * 3 + 1]!;
          light[to + 2]! += warp[column * 3 + 2]!;
        } else {
          light[to]! += red;
          light[to + 1]! += green;
          light[to + 2]! += blue;
        }
      }
    }
    for (let x = 0; x < width; x++) {
      const squares = endsIn[x]! * (last - first);
      const at = (y * width + x) * 4;
      for (let part = 0; part < 3; part++) data[at + part] = codeOf(light[x * 3 + part]! / squares);
      data[at + 3] = 255;
    }
  }
}
