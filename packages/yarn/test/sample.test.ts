import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Measured, type Project, parseQuantity, plan, quantity, withSample } from "../src/index.js";

const read = (text: string) => parseQuantity(text);

/** Twelve runners for the course, as they are planned before a sample is woven. */
const runners: Project = {
  ends: 324,
  picks: 240,
  warp: { yarn: "20/2 Ne" },
  wefts: [{ name: "weft", picks: 240, yarn: "16 lea" }],
  sett: read("14 per cm"),
  pickSett: read("10 per cm"),
  drawIn: read("8 %"),
  pieces: 12,
  waste: read("70 cm"),
};

/** 400 mm in the reed draw in to 376, 6 %; 376 are washed to 347.8, 7.5 %; 300 of cloth took 327 of warp, 9 %. */
const measured: Measured = {
  widthInReed: read("40 cm"),
  width: read("37.6 cm"),
  washedWidth: read("34.78 cm"),
  warp: read("32.7 cm"),
  length: read("30 cm"),
  washedLength: read("28.2 cm"),
  picks: 126,
  over: read("12 cm"),
  squareWeight: read("1.9 g"),
};

describe("a sample that was measured", () => {
  it("tells draw-in, take-up, shrinkage both ways, picks and weight", () => {
    const { numbers } = plan({ ...runners, measured }).sample!;
    const told = numbers.map(({ name, value }) => [name, Number(value.value.toFixed(6)), value.unit]);
    expect(told).toEqual([
      ["draw-in", 6, "%"],
      ["take-up", 9, "%"],
      ["shrinkage-of-width", 7.5, "%"],
      ["shrinkage-of-length", 6, "%"],
      ["picks", 10.5, "per cm"],
      ["cloth-weight", 190, "g/m2"],
    ]);
  });

  it("goes before what is given and what is assumed, and says so", () => {
    const { numbers } = plan({ ...runners, measured }).sample!;
    expect(numbers[0]!.instead).toEqual(runners.drawIn);
    expect(numbers[1]!.instead).toMatchObject({
      value: 10,
      assumed: "handweaver's allowance, common practice",
    });
  });

  it("plans as if its losses had been given", () => {
    const given: Project = {
      ...runners,
      drawIn: read("6 %"),
      takeUp: read("9 %"),
      shrinkage: { width: read("7.5 %"), length: read("6 %") },
      pickSett: read("10.5 per cm"),
    };
    const [told, sampled] = [plan(given), plan({ ...runners, measured })];
    for (const name of ["clothWidth", "finishedWidth", "clothLength", "warpLength"] as const) {
      expect(sampled[name]!.value).toBeCloseTo(told[name]!.value, 9);
    }
    expect(sampled.clothWeight!.value).toBeCloseTo(190, 9);
  });

  it("says by how much each number moves, and of none that does not", () => {
    const { moved } = plan({ ...runners, measured }).sample!;
    const of = (name: string) => moved.find((one) => one.name === name);
    // 324 ends at 14 a cm are 231.43 mm; 8 % less are 212.9, 6 % less 217.5.
    expect(of("cloth-width")!.by).toMatchObject({ value: 4.6, unit: "mm" });
    expect(of("ends")).toBeUndefined();
    expect(of("width-in-reed")).toBeUndefined();
    for (const { by } of moved) expect(by.value).not.toBe(0);
  });

  it("that measures just what was assumed moves nothing", () => {
    const same: Measured = { widthInReed: read("50 cm"), width: read("46 cm") };
    const { moved, numbers } = plan({ ...runners, measured: same }).sample!;
    expect(numbers).toHaveLength(1);
    expect(moved).toEqual([]);
  });

  it("is refused where it is wider on the loom than in the reed, or larger washed", () => {
    expect(() =>
      withSample({ ...runners, measured: { widthInReed: read("40 cm"), width: read("42 cm") } }),
    ).toThrow(/draw-in of the sample/);
    expect(() =>
      withSample({ ...runners, measured: { width: read("40 cm"), washedWidth: read("41 cm") } }),
    ).toThrow(/shrinkage of the sample/);
  });

  it("gives back the losses that it was made with, in any units", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.constantFrom("mm" as const, "cm" as const, "in" as const),
        (drawIn, shrinkage, unit) => {
          const width = 40 * (1 - drawIn / 100);
          const found = withSample({
            ...runners,
            measured: {
              widthInReed: quantity(40, unit),
              width: quantity(width, unit),
              washedWidth: quantity(width * (1 - shrinkage / 100), unit),
            },
          });
          expect(found.drawIn!.value).toBeCloseTo(drawIn, 9);
          expect(found.shrinkage!.width!.value).toBeCloseTo(shrinkage, 9);
          expect(found.shrinkage!.length).toBeUndefined();
        },
      ),
      { numRuns: 50 },
    ));
});
