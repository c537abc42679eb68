import { readFileSync } from "node:fs";
import { BitGrid, fromBooleans, rowCounts } from "@drawcord/grid";
import fc from "fast-check";
import * as fontkit from "fontkit";
import { describe, expect, it } from "vitest";
import { cells } from "../../grid/test/arbitraries.js";
import { hexOf, mixed, readColour } from "../src/colour.js";
import { escapeText } from "../src/drawing/escape.js";
import { fontRuns } from "../src/drawing/font-runs.js";
import { textWidth } from "../src/drawing/metrics.js";
import { palette } from "../src/drawing/palette.js";
import type { Face } from "../src/drawing/shape.js";
import { squaresOf, squaresPath } from "../src/drawing/squares.js";
import { fontFile } from "../src/print/fonts.js";
import { textRuns } from "../src/print/text-runs.js";

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

describe("type", () => {
  it("is as wide as the font files say", () => {
    const ascii = String.fromCharCode(...Array.from({ length: 95 }, (_, i) => 32 + i));
    for (const face of [
      "serif",
      "serif-bold",
      "serif-italic",
      "sans",
      "sans-bold",
    ] as const satisfies Face[]) {
      const font = fontkit.create(readFileSync(fontFile(face))) as fontkit.Font;
      for (const char of ascii) {
        const { advanceWidth } = font.glyphForCodePoint(char.codePointAt(0)!);
        expect(textWidth(char, font.unitsPerEm, face), `${face} ${char}`).toBeCloseTo(advanceWidth, 6);
      }
    }
  });

  it("changes its font with the script, and loses nothing", () => {
    expect(fontRuns("Moth 🦋 שלום مرحبا").map(({ script }) => script)).toEqual([
      "latin",
      "emoji",
      "latin",
      "hebrew",
      "latin",
      "arabic",
    ]);
    expect(fontRuns("👩🏽‍🌾").length).toBe(1);
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        expect(
          fontRuns(text)
            .map((run) => run.text)
            .join(""),
        ).toBe(text);
      }),
    );
  });

  it("stands from the left in the order of its paragraph, on every line of it", () => {
    const fromLeft = (text: string, rtl: boolean) => {
      const { runs, fromLeft: order } = textRuns(text, "serif", rtl);
      return order.map((i) => runs[i]!.text).join("");
    };
    // A word of Hebrew or Arabic is turned by its font; here it keeps the order in which it is read.
    expect(fromLeft("שלום (12) abc.", true)).toBe(".abc (12) שלום");
    expect(fromLeft("שלום (12) abc.", false)).toBe("(12) שלום abc.");
    expect(fromLeft("الفراشة) lanterns", false)).toBe("الفراشة) lanterns");
    expect(fromLeft("Runner (x), 1", false)).toBe("Runner (x), 1");
  });

  it("made safe for a page is read back as it was", () => {
    const decode = (text: string) =>
      text
        .replaceAll("&lt;", "<")
        .replaceAll("&gt;", ">")
        .replaceAll("&quot;", '"')
        .replaceAll("&#39;", "'")
        .replaceAll("&amp;", "&");
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."<>&\"'a;#&lt;") }), (text) => {
        expect(escapeText(text)).not.toMatch(/[<>"']/);
        expect(decode(escapeText(text))).toBe(text);
      }),
    );
    expect(escapeText("a\u0000b\u202ec\ud800")).toBe("a\ufffdb\ufffdc\ufffd");
  });
});
