import { crop, fromCells, fromText, mirror, toText, transpose } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { borderedLifts, parseThreading } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { framedChart } from "../src/index.js";
import { chart } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

const strip = fromText("#..\n###");

describe("a picture framed in a border that turns its corner", () => {
  it("has its strips meet on the diagonal, or butt", () => {
    const motif = fromText("...\n...\n...");
    expect(toText(framedChart(motif, strip, "mitred"))).toBe(
      ["#######", "#..#..#", "#.....#", "##...##", "#.....#", "#..#..#", "#######"].join("\n"),
    );
    const line = fromText("...\n###");
    expect(toText(framedChart(motif, line, "mitred")).split("\n")[1]).toBe("#.....#");
    expect(toText(framedChart(motif, line, "meeting")).split("\n")[1]).toBe(".......");
  });

  it("keeps the picture in its middle, and all four corners alike", () => {
    fc.assert(
      fc.property(
        chart(9, 9),
        chart(4, 6),
        fc.constantFrom("mitred" as const, "meeting" as const),
        (motif, border, corner) => {
          const framed = framedChart(motif, border, corner);
          const depth = border.rows;
          const { rows, columns } = motif;
          expect(crop(framed, { row: depth, column: depth, rows, columns }).equals(motif)).toBe(true);
          const around = framedChart(
            fromText(Array(rows).fill(".".repeat(columns)).join("\n")),
            border,
            corner,
          );
          expect(mirror(around).equals(around)).toBe(true);
          const corners = crop(framed, { row: 0, column: 0, rows: depth, columns: depth });
          if (corner === "mitred") expect(transpose(corners).equals(corners)).toBe(true);
          // The strip lies along the lower edge as it was given, from the corner on.
          const along = Math.min(border.columns, Math.ceil((columns + 2 * depth) / 2));
          for (let unit = 0; unit < along; unit++) expect(framed.get(0, unit)).toBe(border.get(0, unit));
        },
      ),
      { numRuns: 60 },
    );
  });

  it("is refused where there is nothing to frame or to frame with", () => {
    expectRefusal(() => framedChart(fromText(""), strip, "mitred"), "empty-chart", "0 rows and 0 units");
    expectRefusal(() => framedChart(strip, fromText(""), "meeting"), "empty-chart", "0 rows and 0 units");
  });

  it("is the border that a weaving order turns about a block, over a threading that points in the middle", () => {
    fc.assert(
      fc.property(
        fc.array(fc.subarray([1, 2, 3, 4, 5]), { minLength: 1, maxLength: 6 }),
        fc.array(fc.subarray([1, 2, 3]), { minLength: 1, maxLength: 9 }),
        fc.constantFrom("mitred" as const, "meeting" as const),
        (block, upright, corner) => {
          const threading = parseThreading("6-8 1-5 4-1 8-6");
          const squaresOf = (lifts: readonly ShaftSet[]) =>
            fromCells(lifts.length, threading.length, (row, unit) =>
              lifts[row]!.includes(threading[unit]![0]!),
            );
          const lifts = borderedLifts(block, upright, { corner, on: [1, 2, 3, 4, 5], beside: [6, 7, 8] });
          const motif = crop(squaresOf(block), { row: 0, column: 3, rows: block.length, columns: 9 });
          const strip = fromCells(3, upright.length, (deep, along) => upright[along]!.includes(deep + 1));
          expect(toText(squaresOf(lifts))).toBe(toText(framedChart(motif, strip, corner)));
        },
      ),
    );
  });
});
