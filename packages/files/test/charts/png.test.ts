import { deflateSync } from "node:zlib";
import type { Colour } from "@drawcord/draw";
import { type BitGrid, fromText, toBooleans, toText } from "@drawcord/grid";
import fc from "fast-check";
import { decode, encode } from "fast-png";
import { zlibSync } from "fflate";
import { PNG } from "pngjs";
import { describe, expect, it } from "vitest";
import { writeChunks } from "../../src/charts/png/chunks.js";
import { type ClothPictureOptions, type PictureOptions, readPng, writePng } from "../../src/index.js";
import { grids } from "../arbitraries.js";
import { refusal } from "../refusals.js";

const read = (bytes: Uint8Array, options?: PictureOptions) => readPng(bytes, "moth.png", options);
const answer = (bytes: Uint8Array, options?: PictureOptions) => refusal(() => read(bytes, options)).sentence;

/** Colours that are told apart even where only their greys are kept. */
const looks: fc.Arbitrary<PictureOptions> = fc.constantFrom<PictureOptions>(
  {},
  { scale: 1, warp: "#1d2b53", weft: "#fff1e8" },
  { scale: 2, warp: "#ffffff", weft: "#000000" },
  { scale: 3, warp: "#B8860B", weft: "#0a0a0a" },
  { scale: 9 },
);

/** The colours of the pixels as the eye sees them, a line of the picture a line, the top one first. */
function seen(grid: BitGrid, options: ClothPictureOptions): string {
  const { warp = "#000000", weft = "#ffffff", scale = 1 } = options;
  const of = (colours: Colour | readonly Colour[], thread: number) =>
    (typeof colours === "string" ? colours : colours[thread]!).toLowerCase();
  return toBooleans(grid)
    .map((row, pick) =>
      `${row.map((raised, end) => `${raised ? of(warp, end) : of(weft, pick)} `.repeat(scale)).join("")}\n`.repeat(
        scale,
      ),
    )
    .reverse()
    .join("");
}

/** The same by another library. */
function seenByAnother(bytes: Uint8Array): string {
  const { width, data } = PNG.sync.read(Buffer.from(bytes));
  const pixels = data.toString("hex").match(/.{8}/g)!;
  return pixels.map((pixel, i) => `#${pixel.slice(0, 6)} ${i % width === width - 1 ? "\n" : ""}`).join("");
}

describe("a PNG picture", () => {
  it("comes back as it was written, in any colours and at any scale", () => {
    fc.assert(fc.property(grids(), looks, (grid, look) => read(writePng(grid, look), look).equals(grid)));
  });

  it("looks the same to another PNG library", () => {
    fc.assert(
      fc.property(grids(), looks, (grid, look) => {
        expect(seenByAnother(writePng(grid, look))).toBe(seen(grid, look));
      }),
      { numRuns: 40 },
    );
  });

  it("has the colour of the thread that lies over, end by end and pick by pick", () => {
    const few = ["#1d2b53", "#fff1e8", "#b8860b", "#008751"] as const;
    const cloths = grids().chain((grid) => {
      const each = (threads: number) =>
        fc.array(fc.constantFrom<Colour>(...few), { minLength: threads, maxLength: threads });
      return fc.record({
        grid: fc.constant(grid),
        warp: fc.oneof(fc.constant<Colour>("#1d2b53"), each(grid.columns)),
        weft: fc.oneof(
          fc.constant<Colour>("#fff1e8"),
          each(grid.rows).map((all) => ["#ff004d" as const, ...all.slice(1)]),
        ),
        scale: fc.constantFrom(1, 2, 5),
      });
    });
    fc.assert(
      fc.property(cloths, ({ grid, ...look }) => {
        expect(seenByAnother(writePng(grid, look))).toBe(seen(grid, look));
      }),
      { numRuns: 60 },
    );
  });

  it.each([256, 257])("may have as many colours as threads, such as %i", (threads) => {
    const grid = fromText(`${"#.".repeat(150)}\n${".#".repeat(150)}`);
    const shade = (i: number): Colour => `#${(i * 1000).toString(16).padStart(6, "0")}`;
    const warp = Array.from({ length: 300 }, (_, end) => shade(Math.min(end, threads - 2)));
    const bytes = writePng(grid, { warp, weft: "#ffffff" });
    expect(seenByAnother(bytes)).toBe(seen(grid, { warp, weft: "#ffffff" }));
    expect(decode(bytes).palette?.length).toBe(threads === 256 ? 256 : undefined);
  });

  it("is one bit a pixel with a palette of weft and warp", () => {
    const { depth, palette } = decode(writePng(fromText("#."), { warp: "#102030", weft: "#f0e0d0" }));
    expect(depth).toBe(1);
    expect(palette).toEqual([
      [240, 224, 208],
      [16, 32, 48],
    ]);
  });
});

describe("a PNG picture of another hand", () => {
  it("of any kind, interlaced or not, is read", () => {
    const kinds = fc.record({
      channels: fc.constantFrom(1, 2, 3, 4),
      depth: fc.constantFrom(8 as const, 16 as const),
      interlace: fc.constantFrom("null" as const, "Adam7" as const),
    });
    fc.assert(
      fc.property(grids(), kinds, (grid, { channels, depth, interlace }) => {
        const most = 2 ** depth - 1;
        const alpha = channels % 2 === 0;
        const samples = toBooleans(grid)
          .reverse()
          .flat()
          .flatMap((raised) =>
            Array.from({ length: channels }, (_, i) =>
              alpha && i === channels - 1 ? most : raised ? 0 : most,
            ),
          );
        const data = depth === 8 ? Uint8Array.from(samples) : Uint16Array.from(samples);
        const { rows: height, columns: width } = grid;
        expect(read(encode({ width, height, data, depth, channels }, { interlace })).equals(grid)).toBe(true);
      }),
    );
  });

  it.each([0, 1, 2, 3, 4, -1])("with lines filtered in way %i is read", (filterType) => {
    fc.assert(
      fc.property(grids(), (grid) => {
        const png = new PNG({ width: grid.columns, height: grid.rows });
        // A slope under the squares, so that every filter has something to do.
        toBooleans(grid)
          .reverse()
          .forEach((row, y) => {
            row.forEach((raised, x) => {
              const grey = (raised ? 10 : 180) + ((x + 2 * y) % 50);
              png.data.set([grey, grey + 5, grey + 9, 255], 4 * (y * grid.columns + x));
            });
          });
        expect(read(PNG.sync.write(png, { filterType })).equals(grid)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  it.each([1, 2, 3, 4])("of nothing but noise, filtered in way %i, is read pixel by pixel", (filterType) => {
    const noise = fc
      .record({ width: fc.integer({ min: 1, max: 20 }), height: fc.integer({ min: 2, max: 20 }) })
      .chain(({ width, height }) =>
        fc.record({
          width: fc.constant(width),
          greys: fc.array(fc.integer({ min: 0, max: 255 }), {
            minLength: width * height,
            maxLength: width * height,
          }),
        }),
      );
    fc.assert(
      fc.property(noise, ({ width, greys }) => {
        const png = new PNG({ width, height: greys.length / width });
        greys.forEach((grey, i) => {
          png.data.set([grey, grey, grey, 255], 4 * i);
        });
        // A pixel is raised where it is nearer to black than to white.
        const raised = greys.map((grey) => grey < 128);
        expect(
          toBooleans(read(PNG.sync.write(png, { filterType })))
            .reverse()
            .flat(),
        ).toEqual(raised);
      }),
      { numRuns: 60 },
    );
  });

  it.each([1, 2, 4])("with %i bits a pixel, interlaced, is read as another library reads it", (depth) => {
    fc.assert(
      fc.property(grids(), (grid) => {
        const bytes = interlacedGrey(grid, depth);
        const { data } = PNG.sync.read(Buffer.from(bytes));
        const raised = [...data].filter((_, i) => i % 4 === 0).map((grey) => grey < 128);
        expect(toBooleans(read(bytes)).reverse().flat()).toEqual(raised);
        expect(read(bytes).equals(grid)).toBe(true);
      }),
    );
  });

  it("shows white where it is transparent", () => {
    const data = Uint8Array.from([0, 0, 0, 0, 0, 0, 0, 255]);
    expect(toText(read(encode({ width: 2, height: 1, data, channels: 4 })))).toBe(".#");
    const palette = [
      [0, 0, 0, 0],
      [0, 0, 0, 255],
    ];
    const packed = Uint8Array.from([0b0100_0000]);
    expect(toText(read(encode({ width: 2, height: 1, data: packed, channels: 1, depth: 1, palette })))).toBe(
      ".#",
    );
  });
});

/** An interlaced picture of greys, put together pixel by pixel; raised ends black. */
function interlacedGrey(grid: BitGrid, depth: number): Uint8Array {
  const { rows: height, columns: width } = grid;
  const picture = toBooleans(grid).reverse();
  const passes = ["0088", "4088", "0448", "2044", "0224", "1022", "0112"].map((pass) =>
    [...pass].map(Number),
  );
  const bytes: number[] = [];
  for (const [x0, y0, right, down] of passes as [number, number, number, number][]) {
    for (let y = y0; y < height && x0 < width; y += down) {
      let bits = "";
      for (let x = x0; x < width; x += right) bits += (picture[y]![x] ? "0" : "1").repeat(depth);
      bytes.push(0, ...bits.match(/.{1,8}/g)!.map((eight) => Number.parseInt(eight.padEnd(8, "0"), 2)));
    }
  }
  const header = new Uint8Array(13);
  new DataView(header.buffer).setUint32(0, width);
  new DataView(header.buffer).setUint32(4, height);
  header.set([depth, 0, 0, 0, 1], 8);
  return writeChunks([
    { type: "IHDR", data: header },
    { type: "IDAT", data: zlibSync(Uint8Array.from(bytes)) },
  ]);
}

describe("a PNG picture that cannot be used is refused", () => {
  const small = writePng(fromText("#.\n.#"));
  const withHeader = (width: number, height: number, data: Uint8Array, kind = [1, 0, 0, 0, 0]) => {
    const header = new Uint8Array(13);
    new DataView(header.buffer).setUint32(0, width);
    new DataView(header.buffer).setUint32(4, height);
    header.set(kind, 8);
    return writeChunks([
      { type: "IHDR", data: header },
      { type: "IDAT", data },
    ]);
  };

  it.each<[string, Uint8Array, string]>([
    ["of another kind of file", Uint8Array.from([1, 2, 3]), "this is no PNG picture"],
    ["cut short", small.slice(0, 60), "the PNG picture is cut short"],
    [
      "with a byte changed",
      small.map((byte, i) => (i === 50 ? byte ^ 1 : byte)),
      "the PNG picture is damaged: the check sum of its part PLTE does not fit",
    ],
    ["without pixels", withHeader(0, 4, zlibSync(new Uint8Array(0))), "the PNG picture has no pixels"],
    [
      "beyond measure",
      withHeader(2 ** 31, 2 ** 31, zlibSync(new Uint8Array(9))),
      "the PNG picture has 2147483648 by 2147483648 pixels, more than are read",
    ],
    [
      "that unpacks to less",
      withHeader(8, 4, zlibSync(new Uint8Array(7))),
      "the PNG picture unpacks to less than its width and height",
    ],
    [
      "that unpacks to far more",
      withHeader(8, 4, deflateSync(new Uint8Array(2 ** 26))),
      "the PNG picture unpacks to more than its width and height",
    ],
    [
      "that cannot be unpacked",
      withHeader(8, 4, new Uint8Array(40).fill(0xee)),
      "the PNG picture is damaged: its squares cannot be unpacked",
    ],
    [
      "with a filter that there is not",
      withHeader(8, 1, zlibSync(Uint8Array.from([9, 0]))),
      "the PNG picture is damaged: there is no filter 9",
    ],
    [
      "of a depth that there is not",
      withHeader(8, 1, zlibSync(new Uint8Array(2)), [3, 0, 0, 0, 0]),
      "the PNG picture is of a kind that there is not",
    ],
    [
      "without its palette",
      withHeader(8, 1, zlibSync(new Uint8Array(2)), [1, 3, 0, 0, 0]),
      "the PNG picture has no palette, or a damaged one",
    ],
  ])("%s", (_what, bytes, sentence) => {
    expect(answer(bytes)).toBe(sentence);
  });

  it("where its sides are no whole squares", () => {
    expect(answer(small, { scale: 3 })).toBe(
      "the picture has 2 by 2 pixels, which do not make whole squares of 3",
    );
  });

  it("where the colours cannot be", () => {
    expect(answer(small, { warp: "#red" })).toBe('a colour such as #b8860b was expected, not "#red"');
    expect(answer(small, { warp: "#aaaaaa", weft: "#AAAAAA" })).toBe(
      "warp and weft both have the colour #aaaaaa; they must differ",
    );
    const sentence = (options: ClothPictureOptions) =>
      refusal(() => writePng(fromText("#.\n.#"), options)).sentence;
    expect(sentence({ scale: 0 })).toBe("the scale is 0; expected 1 to 256 pixels a square");
    expect(sentence({ warp: ["#aaaaaa", "#AAAAAA"], weft: "#aaaaaa" })).toBe(
      "warp and weft both have the colour #aaaaaa; they must differ",
    );
    expect(sentence({ warp: ["#aaaaaa", "#000000", "#aaaaaa"] })).toBe(
      "3 colours are given for 2 ends; expected one, or one for each",
    );
    expect(sentence({ weft: ["#aaaaaa", "red" as Colour] })).toBe(
      'a colour such as #b8860b was expected, not "red"',
    );
  });
});
