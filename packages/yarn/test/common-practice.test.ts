/** Check values that weavers know by heart, each marked common practice: the only place for this set of numbers. */
import { describe, expect, it } from "vitest";
import { calculate, convert, type Project, parseQuantity, parseReed, plan, quantity } from "../src/index.js";
import { near } from "./near.js";

describe("formulas", () => {
  it("6 yards of warp give 8 towels of 17 inches at a tenth taken up and a tenth shrunk (common practice)", () => {
    const c = calculate("cloth-of-a-piece", { f: "17 in" });
    const p = calculate("warp-of-a-piece", { c });
    expect(calculate("pieces-of-warp", { L: "6 yd", p }).value).toBe(8);
    const left = calculate("warp-left-over", { L: "6 yd", N: 8, p });
    expect(left.value).toBeGreaterThan(0);
    expect(left.value).toBeLessThan(p.value);
  });

  it("564 ends at 40 an inch are 14.1 inches in the reed, and 141 units of 4 (common practice)", () => {
    near(convert(calculate("width-in-reed", { n: 564, S: "40 per inch" }), "in").value, 14.1);
    expect(calculate("units-of-ends", { n: 564, e: 4 }).value).toBe(141);
    expect(calculate("lingos-of-units", { u: 141, g: 1 }).value).toBe(141);
  });
});

describe("a plan", () => {
  const towels: Project = {
    ends: 564,
    units: 141,
    lingos: 141,
    picks: 680,
    warp: { yarn: "16/2 Ne", package: parseQuantity("8400 yd") },
    wefts: [{ name: "weft", yarn: "8/2 Ne", picks: 680 }],
    sett: parseQuantity("40 per inch"),
    pickSett: parseQuantity("30 per inch"),
    reed: parseReed("20 per inch"),
    drawIn: parseQuantity("5 %"),
    takeUp: parseQuantity("10 %"),
    shrinkage: { width: parseQuantity("10 %"), length: parseQuantity("10 %") },
    length: parseQuantity("17 in"),
    warpLength: parseQuantity("6 yd"),
  };

  it("of 564 ends at 40 an inch: 14.1 inches in the reed, about 12 finished, 141 units and lingos (common practice)", () => {
    const found = plan(towels);
    near(convert(found.widthInReed!, "in").value, 14.1);
    expect(Math.round(convert(found.finishedWidth!, "in").value)).toBe(12);
    expect(found.units).toEqual(quantity(141, "units"));
    expect(found.lingos).toEqual(quantity(141, "lingos"));
    expect(found.reed!.printed).toBe("2 a dent in 282 dents");
  });

  it("of 6 yards of warp: 8 towels of 17 inches, with some to spare, from one cone of 8400 yards (common practice)", () => {
    const { buy, leftOver, pieces, warpOfPiece, warpYarn } = plan(towels);
    expect(pieces.value).toBe(8);
    expect(leftOver!.value).toBeGreaterThan(0);
    expect(leftOver!.value).toBeLessThan(warpOfPiece!.value);
    // 564 ends of 6 yards.
    near(convert(warpYarn!.length, "yd").value, 3384);
    expect(buy[0]!.packages!.value).toBe(1);
  });
});
