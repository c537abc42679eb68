import fc from "fast-check";
import * as fontkit from "fontkit";
import { describe, expect, it } from "vitest";
import { escapeText } from "../src/drawing/escape.js";
import { fontRuns } from "../src/drawing/font-runs.js";
import { textWidth } from "../src/drawing/metrics.js";
import type { Face } from "../src/drawing/shape.js";
import { installedFont } from "../src/print/fonts.js";
import { textRuns } from "../src/print/text-runs.js";

describe("type", () => {
  it("is as wide as the font files say", async () => {
    const ascii = String.fromCharCode(...Array.from({ length: 95 }, (_, i) => 32 + i));
    for (const face of [
      "serif",
      "serif-bold",
      "serif-italic",
      "sans",
      "sans-bold",
    ] as const satisfies Face[]) {
      const font = fontkit.create(await installedFont(face)) as fontkit.Font;
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
