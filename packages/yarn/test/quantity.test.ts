import fc from "fast-check";
import Qty from "js-quantities";
import { describe, expect, it } from "vitest";
import {
  convert,
  type Kind,
  kinds,
  parseQuantity,
  printQuantity,
  quantity,
  toMetric,
  type UnitName,
  YarnError,
} from "../src/index.js";
import { units } from "../src/quantity/units.js";
import { kind, measure, quantityOf, unitOf } from "./arbitraries.js";

describe("reading a quantity", () => {
  it.each([
    ["6 mm", 6, "mm", "length"],
    ["14.6 in", 14.6, "in", "length"],
    ["14 1/2 in", 14.5, "in", "length"],
    ["14-1/2 inches", 14.5, "in", "length"],
    ["3/4 in", 0.75, "in", "length"],
    ["14½ in", 14.5, "in", "length"],
    ["½ yd", 0.5, "yd", "length"],
    ['12"', 12, "in", "length"],
    ["8 yd", 8, "yd", "length"],
    ["  30cm ", 30, "cm", "length"],
    ["5.5 METRES", 5.5, "m", "length"],
    ["150 g", 150, "g", "mass"],
    ["4 ounces", 4, "oz", "mass"],
    ["24 per inch", 24, "per inch", "sett"],
    ["24 ends per inch", 24, "per inch", "sett"],
    ["24/in", 24, "per inch", "sett"],
    ["24 epi", 24, "per inch", "sett"],
    ["36 an inch", 36, "per inch", "sett"],
    ["20 per cm", 20, "per cm", "sett"],
    ["60 dents in 10 cm", 60, "per 10 cm", "sett"],
    ["8 %", 8, "%", "share"],
    ["8%", 8, "%", "share"],
    ["0 mm", 0, "mm", "length"],
    ["9 threads", 9, "threads", "number"],
    ["75 den", 75, "den", "linear-density"],
    ["198 g/m2", 198, "g/m2", "area-weight"],
    ["1e3 m", 1000, "m", "length"],
  ] satisfies [string, number, UnitName, Kind][])("%s", (text, value, unit, kind) => {
    expect(parseQuantity(text)).toEqual({ value, unit, kind });
  });

  it.each([
    [1, "pieces", "1 piece"],
    [2, "pieces", "2 pieces"],
    [0, "ends", "0 ends"],
    [1, "per cm", "1 per cm"],
    [200, "g/m2", "200 g/m²"],
    [5.9, "oz/yd2", "5.9 oz/yd²"],
    [1.5, "g/cm3", "1.5 g/cm³"],
  ] satisfies [number, UnitName, string][])("%d %s is printed as %s", (value, unit, text) => {
    expect(printQuantity(quantity(value, unit))).toBe(text);
    expect(parseQuantity(text)).toEqual(quantity(value, unit));
  });

  it("takes a bare number only where a number fits", () => {
    expect(parseQuantity("540", { kind: "number" })).toEqual({ value: 540, unit: "", kind: "number" });
    expect(parseQuantity("9", { kind: ["length", "number"] }).kind).toBe("number");
  });

  it.each([
    ["12", undefined, "no-unit", 3, '"12" has no unit; expected its unit, such as 30 cm'],
    ["12", "length", "no-unit", 3, '"12" has no unit; expected a length such as 30 cm or 12 in'],
    ["12 g", "length", "wrong-kind", 4, '"12 g" is not a length such as 30 cm or 12 in'],
    ["6 mn", "length", "unknown-unit", 3, '"6 mn": no unit is called "mn"; is it mm?'],
    [
      "6 parsecs",
      undefined,
      "unknown-unit",
      3,
      '"6 parsecs": no unit is called "parsecs"; expected a unit such as mm, in, g, oz, per cm, per inch or %',
    ],
    [
      "24 per yard",
      "sett",
      "unknown-unit",
      4,
      '"24 per yard": no unit is called "per yard"; expected a unit such as mm, in, g, oz, per cm, per inch or %',
    ],
    [
      "24 per inhc",
      "sett",
      "unknown-unit",
      4,
      '"24 per inhc": no unit is called "per inhc"; is it per inch?',
    ],
    [
      "1,5 m",
      "length",
      "no-number",
      2,
      '"1,5 m" has a comma in its number; expected a decimal point, as in 1.5',
    ],
    ["about 5 m", "length", "no-number", 1, '"about 5 m" does not begin with a number'],
    ["NaN m", "length", "no-number", 1, '"NaN m" does not begin with a number'],
    ["", "length", "no-number", 1, '"" does not begin with a number'],
    ["1e999 m", "length", "not-finite", 1, '"1e999 m" is not a finite number'],
    ["1/0 m", "length", "not-finite", 1, '"1/0 m" is not a finite number'],
    ["-3 cm", "length", "negative", undefined, '"-3 cm" is below zero; it must be more'],
    ["0 per inch", "sett", "zero", undefined, '"0 per inch" is zero; it must be more'],
  ] as const)("%s is refused in one sentence", (text, kind, code, column, message) => {
    const failure = caught(() => parseQuantity(text, kind === undefined ? {} : { kind }));
    expect(failure).toBeInstanceOf(YarnError);
    expect(failure).toMatchObject({ code, message });
    const { column: at } = failure.facts;
    expect(at).toBe(column);
  });

  it("what is written reads back as the same quantity", () =>
    fc.assert(
      fc.property(quantityOf(), (one) => {
        expect(parseQuantity(printQuantity(one), { kind: one.kind })).toEqual(one);
      }),
    ));

  it("every other name of a unit means that unit", () => {
    for (const [name, unit] of Object.entries(units)) {
      for (const other of unit.names)
        expect(parseQuantity(`3 ${other}`), other).toMatchObject({ unit: name });
    }
  });

  it("any text is a quantity or a YarnError", () =>
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.tuple(measure(), fc.string()).map(([n, s]) => `${n}${s}`),
        ),
        (text) => {
          try {
            expect(parseQuantity(text).value).toBeGreaterThanOrEqual(0);
          } catch (failure) {
            expect(failure).toBeInstanceOf(YarnError);
          }
        },
      ),
    ));
});

describe("converting", () => {
  it("an inch is 25.4 mm, a yard 914.4 mm, a pound 453.59237 g and 7000 grains (NIST SP 811)", () => {
    expect(toMetric(quantity(1, "in"))).toEqual(quantity(25.4, "mm"));
    expect(toMetric(quantity(1, "yd"))).toEqual(quantity(914.4, "mm"));
    expect(toMetric(quantity(1, "lb"))).toEqual(quantity(453.59237, "g"));
    expect(convert(quantity(1, "lb"), "gr")).toEqual(quantity(7000, "gr"));
    expect(convert(quantity(1, "lb"), "oz")).toEqual(quantity(16, "oz"));
    expect(convert(quantity(36, "in"), "yd")).toEqual(quantity(1, "yd"));
    expect(convert(quantity(10, "per inch"), "per 10 cm").value).toBeCloseTo(39.37007874, 8);
  });

  it("stays within two units in the last place of the exact fraction", () =>
    fc.assert(
      fc.property(
        kind().chain((one) => fc.tuple(fc.integer({ min: 1, max: 1_000_000 }), unitOf(one), unitOf(one))),
        ([value, from, to]) => {
          const [a, b] = units[from].ratio.map(BigInt) as [bigint, bigint];
          const [c, d] = units[to].ratio.map(BigInt) as [bigint, bigint];
          const shift = 2n ** 200n;
          const exact = Number((BigInt(value) * a * d * shift) / (b * c)) / 2 ** 200;
          const found = convert(quantity(value, from), to).value;
          expect(Math.abs(found - exact)).toBeLessThanOrEqual(2 * Number.EPSILON * exact);
        },
      ),
    ));

  it("there and back gives the same value within two units in the last place", () =>
    fc.assert(
      fc.property(
        quantityOf().chain((one) => fc.tuple(fc.constant(one), unitOf(one.kind))),
        ([one, unit]) => {
          const back = convert(convert(one, unit), one.unit).value;
          expect(Math.abs(back - one.value)).toBeLessThanOrEqual(2 * Number.EPSILON * one.value);
        },
      ),
    ));

  it("agrees with a general-purpose library of units, to the digits that it holds", () => {
    const foreign: Partial<Record<UnitName, string>> = {
      mm: "mm",
      cm: "cm",
      m: "m",
      km: "km",
      in: "in",
      ft: "ft",
      yd: "yd",
      mg: "mg",
      g: "g",
      kg: "kg",
      gr: "grain",
      oz: "oz",
      lb: "lb",
      "per cm": "1/cm",
      "per inch": "1/in",
      "g/m2": "g/m2",
      "oz/yd2": "oz/yd2",
      tex: "g/km",
    };
    const known = Object.keys(foreign) as UnitName[];
    for (const from of known) {
      for (const to of known.filter((unit) => units[unit].kind === units[from].kind)) {
        const theirs = new Qty(7.25, foreign[from]!).to(foreign[to]!).scalar;
        expect(convert(quantity(7.25, from), to).value / theirs, `${from} to ${to}`).toBeCloseTo(1, 8);
      }
    }
  });

  it("a length is not given in grams", () => {
    expect(caught(() => convert(quantity(3, "mm"), "g"))).toMatchObject({
      code: "wrong-kind",
      message: "3 mm cannot be given in g",
    });
  });

  it("each kind has a metric unit of its own kind", () => {
    for (const [one, { metric }] of Object.entries(kinds)) expect(units[metric].kind).toBe(one);
  });
});

function caught(run: () => unknown): YarnError {
  try {
    run();
  } catch (failure) {
    return failure as YarnError;
  }
  throw new Error("nothing was thrown");
}
