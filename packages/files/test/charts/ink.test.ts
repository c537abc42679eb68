import { fromText, toText } from "@drawcord/grid";
import fc from "fast-check";
import { encode } from "fast-png";
import { describe, expect, it } from "vitest";
import { type InkOptions, readInkedPng, readPng, writePng } from "../../src/index.js";
import { grids } from "../arbitraries.js";
import { refusal } from "../refusals.js";

type Rgb = readonly [number, number, number];
const white: Rgb = [255, 255, 255];
const red: Rgb = [176, 32, 40];
const green: Rgb = [20, 128, 60];
const colours: Readonly<Record<string, Rgb>> = {
  ".": white,
  "#": red,
  g: green,
  p: [240, 228, 226],
  k: [0, 0, 0],
  m: [120, 120, 120],
  l: [160, 160, 160],
};

/** A picture of lines of letters, the top line first, `scale` pixels a square. */
function picture(text: string, scale = 1): Uint8Array {
  const lines = text.split("\n").flatMap((line) => Array.from({ length: scale }, () => line));
  const width = lines[0]!.length * scale;
  const data = lines.flatMap((line) =>
    [...line].flatMap((letter) => Array.from({ length: scale }, () => colours[letter]!).flat()),
  );
  return encode({ width, height: lines.length, data: Uint8Array.from(data), channels: 3, depth: 8 });
}

const read = (text: string, options: InkOptions = {}) =>
  toText(readInkedPng(picture(text, options.scale), "moth.png", options));
const answer = (text: string, options: InkOptions = {}) =>
  refusal(() => readInkedPng(picture(text), "moth.png", options)).sentence;

describe("a chart in ink", () => {
  it("takes a colour on paper without being told which", () => {
    expect(read("#..\n.#.")).toBe("#..\n.#.");
    expect(read("#p.\np#.")).toBe("#..\n.#.");
  });

  it("takes a square of the squared paper for a unit", () => {
    expect(read("#..\n.#.", { scale: 7 })).toBe("#..\n.#.");
  });

  it("takes what is dark in a grey picture, as dark as is asked for", () => {
    expect(read("kml.")).toBe("##..");
    expect(read("kml.", { threshold: 40 })).toBe("#...");
    expect(read("kml.", { threshold: 70 })).toBe("###.");
  });

  it("takes the one ink that is named among several", () => {
    expect(read("#g.\ng#.", { ink: "#b02028" })).toBe("#..\n.#.");
    expect(read("#g.\ng#.", { ink: "#148040" })).toBe(".#.\n#..");
  });

  it("reads what is written in black on white as readPng does", () => {
    fc.assert(
      fc.property(
        grids().filter((grid) => grid.rows * grid.columns > 0),
        (grid) => {
          const bytes = writePng(grid);
          expect(readInkedPng(bytes, "moth.png").equals(readPng(bytes, "moth.png"))).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe("a picture that is no chart in ink", () => {
  it("has colours to choose from", () => {
    expect(answer("#gg\n...")).toBe(
      "the picture has no clear ink among #ffffff (3 squares), #14803c (2 squares), #b02028 (1 square); name the colour of the ink",
    );
    expect(answer("##")).toBe(
      "the picture has no clear ink among #b02028 (2 squares); name the colour of the ink",
    );
  });

  it("has not the ink that is named", () => {
    expect(answer("#..", { ink: "#0000ff" })).toBe(
      "no square has the ink #0000ff; the picture has #ffffff (2 squares), #b02028 (1 square)",
    );
    expect(answer("#..", { ink: "#nope" })).toContain("a colour such as #b8860b was expected");
  });

  it("has sides that make no whole squares, or options that cannot be", () => {
    expect(answer("#..", { scale: 2 })).toContain("which do not make whole squares of 2");
    expect(answer("#..", { scale: 0 })).toBe("the scale is 0; expected 1 to 256 pixels a square");
    expect(answer("#..", { threshold: 100 })).toBe("the threshold is 100; expected 1 to 99 percent");
  });

  it("is cut off", () => {
    const bytes = writePng(fromText("#."));
    expect(refusal(() => readInkedPng(bytes.subarray(0, bytes.length - 20), "moth.png")).code).toBe(
      "bad-chart",
    );
  });
});
