import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  colourDistance,
  colourOf,
  isDark,
  mixed,
  parseColour,
  type Rgb,
  rgbOf,
  toldApart,
} from "../src/index.js";

const channel = fc.nat({ max: 255 });
const rgb: fc.Arbitrary<Rgb> = fc.tuple(channel, channel, channel);

describe("colours", () => {
  it("come back from their text", () => {
    fc.assert(
      fc.property(rgb, (colour) => {
        expect(rgbOf(colourOf(colour))).toEqual(colour);
      }),
    );
    expect(rgbOf("#B8902f")).toEqual([184, 144, 47]);
    for (const text of ["", "b8902f", "#b8902", "#b8902g", "old gold", "#b8902f0"]) {
      expect(() => rgbOf(text)).toThrow(
        expect.objectContaining({
          name: "DrawError",
          code: "bad-colour",
          message: `a colour such as #b8860b was expected, not "${text}"`,
        }),
      );
    }
  });

  it("told apart stand out from white and black where a shade can", () => {
    fc.assert(
      fc.property(rgb, (colour) => {
        const shade = toldApart(colour, [[255, 255, 255]]);
        expect(colourDistance(shade, [255, 255, 255])).toBeGreaterThan(1000);
        if (toldApart(colour, []) !== colour) throw new Error("moved for nothing");
      }),
    );
    expect(isDark([40, 60, 100])).toBe(true);
    expect(isDark([200, 200, 200])).toBe(false);
  });

  it("are read as figures, as names, and as shades of names", () => {
    expect(parseColour("#B8902F")).toEqual([184, 144, 47]);
    expect(parseColour("#fff")).toEqual([255, 255, 255]);
    expect(parseColour("old gold")).toEqual(parseColour("gold"));
    expect(parseColour("moonlit heron")).toBeUndefined();
    const lightness = (name: string) => parseColour(name)!.reduce((sum, part) => sum + part, 0);
    expect(lightness("dark green")).toBeLessThan(lightness("green"));
    expect(lightness("pale green")).toBeGreaterThan(lightness("green"));
    expect(() => parseColour("#12")).toThrow('the colour "#12" is not written #rgb or #rrggbb');
  });

  it("of half black and half white threads mix to the grey of half the light, 188 in sRGB", () => {
    // IEC 61966-2-1: 1.055 x 0.5^(1/2.4) - 0.055 = 0.7354, of 255 = 187.5.
    expect(
      colourOf(
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
});
