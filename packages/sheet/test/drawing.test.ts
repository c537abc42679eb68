import { BitGrid, fromBooleans, rowCounts } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cells } from "../../grid/test/arbitraries.js";
import { palette } from "../../page/src/drawing/palette.js";
import { hexOf, mixed, readColour } from "../src/colour.js";
import { squaresOf, squaresPath } from "../src/drawing/squares.js";

const grids = cells(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 70 })).map(({ cells: rows }) =>
  fromBooleans(rows),
);

describe("squares of a grid", () => {
  it("are all in the path, once each, and no others", () => {
    fc.assert(
      fc.property(grids, (grid) => {
        const squares = squaresOf(squaresPath(grid));
        const raised = rowCounts(grid).reduce((sum, one) => sum + one, 0);
        expect(squares.length).toBe(raised);
        const distinct = new Set(squares.map(([column, row]) => row * grid.columns + column));
        expect(distinct.size).toBe(raised);
        for (const [column, row] of squares) expect(grid.get(grid.rows - 1 - row, column)).toBe(true);
      }),
    );
  });

  it("a solid area is one stroke, however large", () => {
    const solid = BitGrid.own(500, 64, new Uint32Array(1000).fill(0xffff_ffff));
    expect(squaresPath(solid)).toBe("M0 0h64v500h-64z");
  });
});

describe("colours", () => {
  it("are read as figures, as names, and as shades of names", () => {
    expect(readColour("#B8902F")).toEqual([184, 144, 47]);
    expect(readColour("#fff")).toEqual([255, 255, 255]);
    expect(readColour("old gold")).toEqual(readColour("gold"));
    expect(readColour("moonlit heron")).toBeUndefined();
    const lightness = (name: string) => readColour(name)!.reduce((sum, part) => sum + part, 0);
    expect(lightness("dark green")).toBeLessThan(lightness("green"));
    expect(lightness("pale green")).toBeGreaterThan(lightness("green"));
    expect(() => readColour("#12")).toThrow('the colour "#12" is not written #rgb or #rrggbb');
  });

  it("of half black and half white threads mix to the grey of half the light, 188 in sRGB", () => {
    // IEC 61966-2-1: 1.055 x 0.5^(1/2.4) - 0.055 = 0.7354, of 255 = 187.5.
    expect(
      hexOf(
        mixed([
          [[0, 0, 0], 1],
          [[255, 255, 255], 1],
        ]),
      ),
    ).toBe("#bcbcbc");
  });

  it("mix to themselves", () => {
    const channel = fc.nat({ max: 255 });
    fc.assert(
      fc.property(fc.tuple(channel, channel, channel), fc.integer({ min: 1, max: 9 }), (colour, share) => {
        expect(
          mixed([
            [colour, share],
            [colour, 1],
          ]),
        ).toEqual(colour);
      }),
    );
  });

  it("of text stand out from paper by the ratio that WCAG 2.2 asks for (1.4.3: 4.5 to 1)", () => {
    const light = (hex: string) => {
      const [r, g, b] = readColour(hex)!.map((code) => {
        const part = code / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      }) as [number, number, number];
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    for (const ink of [palette.ink, palette.muted, palette.accent]) {
      expect((1 + 0.05) / (light(ink) + 0.05)).toBeGreaterThan(4.5);
    }
  });

  it("of findings are those of Okabe and Ito 2008: vermilion, orange, blue", () => {
    expect([palette.error, palette.warning, palette.note].map(readColour)).toEqual([
      [213, 94, 0],
      [230, 159, 0],
      [0, 114, 178],
    ]);
  });
});
