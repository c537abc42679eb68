import { fromText, toBooleans, toText } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPbm, readTextChart, writePbm, writeTextChart } from "../../src/index.js";
import { grids } from "../arbitraries.js";
import { refusal } from "../refusals.js";

const latin = (text: string) => Uint8Array.from(text, (char) => char.charCodeAt(0));
const pbm = (text: string) => toText(readPbm(latin(text), "moth.pbm"));
const answer = (text: string) => refusal(() => readPbm(latin(text), "moth.pbm")).message;

describe("a chart in text", () => {
  it("comes back as it was written", () => {
    fc.assert(fc.property(grids(), (grid) => readTextChart(writeTextChart(grid), "chart").equals(grid)));
  });

  it("may have any line ends, blanks after its lines, and empty lines around it", () => {
    for (const end of ["\n", "\r\n", "\r"]) {
      const text = ["", "#.# ", "..#", "", ""].join(end);
      expect(toText(readTextChart(text, "chart"))).toBe("#.#\n..#");
    }
  });

  it.each([
    ["\n#.\n#o\n", 'chart:3:2: found "o"; a drawing has only # (raised) and . (lowered)'],
    ["#.\n##.\n", "chart:2:1: this line has 3 columns; the first line has 2"],
    ["#.\n\n#.\n", "chart:2:1: this line has 0 columns; the first line has 2"],
    ["", "chart:1:1: the file is empty"],
  ])("refuses %j with its place", (text, sentence) => {
    expect(refusal(() => readTextChart(text, "chart")).message).toBe(sentence);
  });
});

describe("a portable bitmap", () => {
  it.each(["P1", "P4"] as const)("of kind %s comes back as it was written", (kind) => {
    fc.assert(fc.property(grids(), (grid) => readPbm(writePbm(grid, { kind }), "chart").equals(grid)));
  });

  it("is black where the end is raised, the last row on top", () => {
    const twill = fromText("#...\n.#..");
    expect(new TextDecoder().decode(writePbm(twill, { kind: "P1" }))).toBe("P1\n4 2\n1000\n0100\n");
    expect([...writePbm(twill).slice(7)]).toEqual([0b1000_0000, 0b0100_0000]);
  });

  it("packs each row of the picture by itself, from its left", () => {
    fc.assert(
      fc.property(grids(), (grid) => {
        // The slow way: a text of 0 and 1, eight at a time.
        const bytes = toBooleans(grid)
          .reverse()
          .flatMap((row) =>
            row
              .map(Number)
              .join("")
              .match(/.{1,8}/g)!
              .map((bits) => Number.parseInt(bits.padEnd(8, "0"), 2)),
          );
        expect([...writePbm(grid)].slice(-bytes.length)).toEqual(bytes);
      }),
    );
  });

  it("may have comments and blanks where the format allows them", () => {
    expect(pbm("P1 # moth\n# by hand\n3\t2\n1 0 1\n# last\n001")).toBe("#.#\n..#");
    expect(pbm("P1\r\n3 2\r\n101001")).toBe("#.#\n..#");
    expect(pbm("P4\n#moth\n2 1\n\x80\n")).toBe("#.");
    // One blank parts the header from the squares; squares may look like blanks and comments.
    expect(pbm("P4\n8 2#moth\n#\n")).toBe("..#...##\n....#.#.");
    expect(pbm("P4 8 2\r\n#")).toBe("....#.#.\n..#...##");
  });

  it("is not troubled by what fills its last byte", () => {
    expect(pbm("P4\n3 2\n\xff\xbf")).toBe("###\n#.#");
  });

  it("may have its digits close together", () => {
    expect(pbm("P1 3 2 101001")).toBe("#.#\n..#");
  });

  it.each([
    ["P5\n1 1\n0", "1:1: this is no portable bitmap; it must begin with P1 or P4"],
    ["P1\nmoth", "2:1: the width and the height of the bitmap were expected here"],
    ["P1\n0 2\n", "1:3: the bitmap has no squares"],
    ["P1\n2 2\n10\n1", "4:2: the bitmap ends after 3 of its 4 squares"],
    ["P1\n2 2\n10\n1 \n ", "5:2: the bitmap ends after 3 of its 4 squares"],
    ["P1\n2 2\n10\n1x11", '4:2: "x" was found; a plain bitmap is made of 0 and 1'],
    ["P1\n1 1\n1 1\n", "3:3: something follows the bitmap; a file holds one chart"],
    ["P4\n8 1x\xff", "2:4: a blank was expected before the squares"],
    ["P4\n8 1\n\xff\xff", "3:2: something follows the bitmap; a file holds one chart"],
    [
      "P4\n999999999 999999999\n",
      "3:1: a bitmap of 999999999 by 999999999 squares takes 124999999875000000 bytes; 0 follow",
    ],
    ["P4\n9999999999 1\n", "2:1: the bitmap has sides beyond measure; up to nine digits are read"],
    ["P4\n1 1", "2:4: a bitmap of 1 by 1 squares takes 1 bytes; 0 follow"],
  ])("refuses %j with its place", (text, sentence) => {
    expect(answer(text)).toBe(`moth.pbm:${sentence}`);
  });
});
