import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inchesText } from "../src/numbers/fraction.js";
import { handlesText } from "../src/numbers/handles.js";
import { imperialWords, metricWords, reedWords } from "../src/numbers/say.js";

const mm = (value: number) => ({ value, unit: "mm", kind: "length" }) as const;
const grams = (value: number) => ({ value, unit: "g", kind: "mass" }) as const;

describe("a number as a weaver says it", () => {
  it.each([
    [5133, "5.13 m", "5 yd 22 in"],
    [270, "27 cm", "10 5/8 in"],
    [20, "2 cm", "3/4 in"],
    [1_663_000, "1663 m", "1819 yd"],
    [914.4 * 3, "2.74 m", "3 yd"],
    [6.4, "6.4 mm", "1/4 in"],
  ])("%d mm is %s or %s", (length, metric, imperial) => {
    expect(metricWords(mm(length))).toBe(metric);
    expect(imperialWords(mm(length))).toBe(imperial);
  });

  it("says the same length in metres as in millimetres", () => {
    expect(metricWords({ value: 1663, unit: "m", kind: "length" })).toBe("1663 m");
    expect(metricWords({ value: 2, unit: "in", kind: "length" })).toBe("5.1 cm");
  });

  it.each([
    [148.2, "148 g", "5.2 oz"],
    [1250, "1.25 kg", "2 lb 12 oz"],
    [453.592, "454 g", "1 lb"],
  ])("%d g is %s or %s", (mass, metric, imperial) => {
    expect(metricWords(grams(mass))).toBe(metric);
    expect(imperialWords(grams(mass))).toBe(imperial);
  });

  it("never says a length that a ruler tells from the true one: a sixteenth of an inch below 2 yards", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 71.9, noNaN: true }), (inches) => {
        const [, whole = "0", over = "0", under = "1"] =
          /^(?:(\d+)(?: |$))?(?:(\d)\/(\d))?/.exec(inchesText(inches).replace(/ ?in$/, "")) ?? [];
        const said = Number(whole) + Number(over) / Number(under);
        expect(Math.abs(said - inches)).toBeLessThanOrEqual(1 / 16 + 1e-9);
      }),
    );
  });

  it("gives a reed in the units of the sheet", () => {
    expect(reedWords({ system: "metric", count: 60 }, "metric")).toBe("60 per 10 cm");
    expect(reedWords({ system: "metric", count: 60 }, "imperial")).toBe(
      "15.2 dents an inch (marked 60 per 10 cm)",
    );
    expect(reedWords({ system: "inch", count: 12 }, "metric")).toBe(
      "47.2 dents in 10 cm (marked 12 per inch)",
    );
  });
});

describe("handles on a card", () => {
  const sets = fc.uniqueArray(fc.integer({ min: 1, max: 120 })).map((list) => list.sort((a, b) => a - b));
  const read = (text: string) =>
    text.split(/\s+/).flatMap((word) => {
      if (word === "|" || word === "") return [];
      const [from, to = from] = word.split("–").map(Number) as [number, number?];
      return Array.from({ length: to! - from! + 1 }, (_, i) => from! + i);
    });

  it("are read back as they were, in tens or not", () => {
    fc.assert(
      fc.property(sets, fc.boolean(), (handles, tens) => {
        expect(read(handlesText(handles, tens))).toEqual(handles);
      }),
    );
  });

  it("in tens never run over a ten, and stand in as many groups as there are tens with a handle", () => {
    fc.assert(
      fc.property(sets, (handles) => {
        const groups = handlesText(handles, true).split("|").map(read);
        const tens = groups.map((group) => [...new Set(group.map((one) => Math.ceil(one / 10)))]);
        expect(tens.flat()).toEqual([...new Set(handles.map((one) => Math.ceil(one / 10)))]);
        if (handles.length > 0) for (const ten of tens) expect(ten.length).toBe(1);
      }),
    );
  });
});
