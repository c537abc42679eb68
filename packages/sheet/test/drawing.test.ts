import { parseColour } from "@drawcord/draw";
import { describe, expect, it } from "vitest";
import { palette } from "../../page/src/drawing/palette.js";

describe("colours", () => {
  it("of text stand out from paper by the ratio that WCAG 2.2 asks for (1.4.3: 4.5 to 1)", () => {
    const light = (hex: string) => {
      const [r, g, b] = parseColour(hex)!.map((code) => {
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
    expect([palette.error, palette.warning, palette.note].map(parseColour)).toEqual([
      [213, 94, 0],
      [230, 159, 0],
      [0, 114, 178],
    ]);
  });
});
