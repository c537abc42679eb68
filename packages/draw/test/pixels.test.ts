import { type BitGrid, fromText, type Rectangle } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cells, gridOf } from "../../grid/test/arbitraries.js";
import {
  type Colour,
  colourOf,
  drawPixels,
  drawSvg,
  mixed,
  type Pixels,
  type Rgb,
  rgbOf,
} from "../src/index.js";
import { squaresOf } from "./squares-of.js";

const channel = fc.nat({ max: 255 });
const colour: fc.Arbitrary<Colour> = fc.tuple(channel, channel, channel).map((rgb) => colourOf(rgb));
const orders = fc.record({
  warp: fc.array(colour, { minLength: 1, maxLength: 3 }),
  weft: fc.array(colour, { minLength: 1, maxLength: 3 }),
});
const side = fc.integer({ min: 1, max: 40 });
const grids = cells(side, side).map(gridOf);

function pixel({ data, width }: Pixels, x: number, y: number): Colour {
  const at = (y * width + x) * 4;
  expect(data[at + 3]).toBe(255);
  return colourOf([data[at]!, data[at + 1]!, data[at + 2]!]);
}

/** What lies on top at a crossing: the slow twin. */
function onTop(
  grid: BitGrid,
  { warp, weft }: { warp: Colour[]; weft: Colour[] },
  row: number,
  column: number,
): Colour {
  return grid.get(row, column) ? warp[column % warp.length]! : weft[row % weft.length]!;
}

describe("the pixels of a cloth", () => {
  it("are the colours of what lies on top, the first pick at the bottom, at any whole scale", () => {
    fc.assert(
      fc.property(grids, orders, fc.integer({ min: 1, max: 5 }), (grid, threads, scale) => {
        const picture = drawPixels(grid, { ...threads, scale });
        expect([picture.width, picture.height]).toEqual([grid.columns * scale, grid.rows * scale]);
        for (let y = 0; y < picture.height; y++) {
          for (let x = 0; x < picture.width; x++) {
            const row = grid.rows - 1 - Math.floor(y / scale);
            expect(pixel(picture, x, y)).toBe(onTop(grid, threads, row, Math.floor(x / scale)));
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it("show every thread once and in its order at a scale between", () => {
    const picture = drawPixels(fromText("#.#.\n.#.#"), { scale: 1.5 });
    const line = (y: number) =>
      [0, 1, 2, 3, 4, 5].map((x) => (pixel(picture, x, y) === "#000000" ? "#" : ".")).join("");
    expect([line(0), line(1), line(2)]).toEqual(["#..#..", ".##.##", ".##.##"]);
  });

  it("below 1 have the colour that the light of their threads mixes to", () => {
    fc.assert(
      fc.property(grids, orders, fc.integer({ min: 2, max: 9 }), (grid, threads, by) => {
        const picture = drawPixels(grid, { ...threads, scale: 1 / by });
        const { width, height } = picture;
        expect([width, height]).toEqual(
          [grid.columns, grid.rows].map((threads) => Math.max(1, Math.round(threads / by))),
        );
        for (let y = 0; y < height; y++) {
          for (let x = 0; x < width; x++) {
            const parts: (readonly [Rgb, number])[] = [];
            const [first, last] = shareOf(height - 1 - y, height, grid.rows);
            const [from, to] = shareOf(x, width, grid.columns);
            for (let row = first; row < last; row++)
              for (let column = from; column < to; column++)
                parts.push([rgbOf(onTop(grid, threads, row, column)), 1]);
            const shown = rgbOf(pixel(picture, x, y));
            // The order of adding may turn a last digit.
            for (const [i, part] of mixed(parts).entries())
              expect(Math.abs(part - shown[i]!)).toBeLessThanOrEqual(1);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it("of a view are those of the same place in the whole", () => {
    fc.assert(
      fc.property(
        grids,
        orders,
        fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (grid, threads, at) => {
          const view = viewIn(grid, at as [number, number, number, number]);
          const part = drawPixels(grid, { ...threads, view });
          const whole = drawPixels(grid, threads);
          for (let y = 0; y < part.height; y++) {
            for (let x = 0; x < part.width; x++) {
              expect(pixel(part, x, y)).toBe(
                pixel(whole, view.column + x, grid.rows - view.row - view.rows + y),
              );
            }
          }
        },
      ),
      { numRuns: 50 },
    );
  });

  it("are refused where they cannot be", () => {
    const grid = fromText("#.");
    expect(() => drawPixels(grid, { scale: 0 })).toThrow(
      "the scale is 0; expected pixels a thread, more than 0",
    );
    expect(() => drawPixels(grid, { scale: Number.NaN })).toThrow(
      expect.objectContaining({ code: "bad-scale" }),
    );
    expect(() => drawPixels(grid, { scale: 1e6 })).toThrow(expect.objectContaining({ code: "too-large" }));
    expect(() => drawPixels(grid, { warp: [] })).toThrow(expect.objectContaining({ code: "bad-colour" }));
    expect(() => drawPixels(grid, { weft: "blue" as Colour })).toThrow(
      expect.objectContaining({ code: "bad-colour" }),
    );
    expect(() => drawPixels(grid, { view: { row: 0, column: 1, rows: 1, columns: 2 } })).toThrow(
      expect.objectContaining({ name: "GridError", code: "outside" }),
    );
    expect(drawPixels(fromText("")).data.length).toBe(0);
  });
});

describe("the SVG of a cloth", () => {
  it("draws the same as the pixels, layer upon layer", () => {
    fc.assert(
      fc.property(
        grids,
        orders,
        fc.array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (grid, threads, at) => {
          const view = viewIn(grid, at as [number, number, number, number]);
          const svg = drawSvg(grid, { ...threads, view });
          const picture = drawPixels(grid, { ...threads, view });
          const seen = new Map<string, string>();
          for (const [, fill, d] of svg.matchAll(/<path fill="(#[\da-f]{6})" d="([^"]*)"\/>/g)) {
            for (const [column, row] of squaresOf(d!)) seen.set(`${column} ${row}`, fill!);
          }
          for (let y = 0; y < view.rows; y++)
            for (let x = 0; x < view.columns; x++) expect(seen.get(`${x} ${y}`)).toBe(pixel(picture, x, y));
        },
      ),
      { numRuns: 40 },
    );
  });

  it("says how large it is and what it shows", () => {
    const svg = drawSvg(fromText("#.\n##"), { scale: 3, title: "moth & <lantern>\u0001" });
    expect(svg).toContain('width="6" height="6" viewBox="0 0 2 2"');
    expect(svg).toContain("<title>moth &amp; &lt;lantern>\ufffd</title>");
  });
});

/** The threads that share part `i` of `parts`. */
function shareOf(i: number, parts: number, threads: number): [first: number, end: number] {
  return [Math.floor((i * threads) / parts), Math.floor(((i + 1) * threads) / parts)];
}

/** Some rectangle in a grid, by four shares of what is free. */
function viewIn({ rows, columns }: BitGrid, [a, b, c, d]: [number, number, number, number]): Rectangle {
  const row = Math.floor(a * rows);
  const column = Math.floor(b * columns);
  return {
    row,
    column,
    rows: 1 + Math.floor(c * (rows - row)),
    columns: 1 + Math.floor(d * (columns - column)),
  };
}
