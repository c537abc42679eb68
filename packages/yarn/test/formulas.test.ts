import fc from "fast-check";
import { all as allOfMathjs, create } from "mathjs";
import { describe, expect, it } from "vitest";
import { dimensionOf, dimensions } from "../src/formula/dimension.js";
import { symbolsOf } from "../src/formula/tree.js";
import type { Formula, SymbolSpec } from "../src/formula/types.js";
import { trees } from "../src/formulas/registry.js";
import {
  calculate,
  convert,
  explain,
  type FormulaId,
  formulas,
  kinds,
  type Quantity,
  quantity,
  type Result,
  rounded,
  steps,
  type UnitName,
  YarnError,
} from "../src/index.js";
import { length, unitOf } from "./arbitraries.js";
import { near } from "./near.js";

const all = Object.entries(formulas) as [FormulaId, Formula][];

/** A value that fits a symbol, in one of the units of its kind. */
function valueFor(spec: SymbolSpec): fc.Arbitrary<Quantity> {
  const unit = spec.bare ?? kinds[spec.kind].metric;
  const least = Math.max(spec.least ?? 0, spec.kind === "linear-density" ? 5 : 0.5);
  const most = Math.min(spec.most ?? 200, 200);
  if (spec.kind === "length") return length(1, 1_000_000);
  const value = spec.whole
    ? fc.integer({ min: Math.ceil(least), max: most })
    : fc.double({ min: least, max: most, noNaN: true });
  return fc.tuple(value, unitOf(spec.kind)).map(([one, other]) => convert(quantity(one, unit), other));
}

/** Values for all symbols of a formula, each twice: as drawn and in the metric unit. */
function valuesFor(formula: Formula): fc.Arbitrary<Record<string, Quantity | Quantity[]>> {
  return fc.record(
    Object.fromEntries(
      Object.entries(formula.symbols).map(([name, spec]): [string, fc.Arbitrary<Quantity | Quantity[]>] => [
        name,
        spec.list ? fc.array(valueFor(spec), { minLength: 1, maxLength: 3 }) : valueFor(spec),
      ]),
    ),
  );
}

const inMetric = (value: Quantity | Quantity[]): Quantity | Quantity[] =>
  Array.isArray(value)
    ? value.map((one) => convert(one, kinds[one.kind].metric))
    : convert(value, kinds[value.kind].metric);

/** The result, or the refusal of values that do not go together. */
function attempt(id: FormulaId, values: Record<string, Quantity | Quantity[]>): Result | YarnError {
  try {
    return calculate(id, values as never);
  } catch (failure) {
    if (failure instanceof YarnError) return failure;
    throw failure;
  }
}

/** Every command of TeX that a working is written with; one run together with the letter after it is none of them. */
const texCommands =
  "frac sqrt sum cdot times approx left right lceil rceil lfloor rfloor max min mathrm mathit pi phi rho".split(
    " ",
  );

describe("the registry", () => {
  it.each(all)("%s uses its symbols and no others, and has a source", (id, formula) => {
    const used = symbolsOf(trees[id]);
    expect([...used].sort()).toEqual(Object.keys(formula.symbols).sort());
    expect(formula.source).not.toBe("");
    expect(formula.title).not.toBe("");
  });

  it("no two formulas have the same title", () => {
    const titles = all.map(([, { title }]) => title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it.each(all)("%s gives the same in inches, yards and pounds as in metric units", (id, formula) => {
    let worked = 0;
    fc.assert(
      fc.property(valuesFor(formula), (values) => {
        const metric = Object.fromEntries(
          Object.entries(values).map(([name, value]) => [name, inMetric(value)]),
        );
        const found = attempt(id, values);
        const again = attempt(id, metric);
        if (found instanceof YarnError) {
          expect(["absurd", "not-finite"]).toContain(found.code);
          return;
        }
        worked++;
        // A whole number of things may tip over where the two roundings fall on either side of a border.
        if (formula.result.decimals === 0 && /floor|ceil|round/.test(formula.expression)) {
          expect(Math.abs(found.value - (again as Result).value)).toBeLessThanOrEqual(1);
        } else if (/ - /.test(formula.expression)) {
          expect(Math.abs(found.value - (again as Result).value)).toBeLessThanOrEqual(
            1e-9 * Math.max(1e6, Math.abs(found.value)),
          );
        } else near(found.value, (again as Result).value, 1e-9);
        expect(found.kind).toBe(formula.result.kind);
      }),
      { numRuns: 150 },
    );
    expect(worked).toBeGreaterThan(10);
  });
});

describe("the working", () => {
  const width = calculate("width-in-reed", { n: 432, S: "30 per inch" });

  it("gives formula, substitution with units, result, rounding, values and source as text", () => {
    expect(explain(width).text).toBe(
      [
        "width in the reed",
        "  W = n / S",
        "  W = 432 / (30 per inch) = 365.76 mm = 14.4 in",
        "  to 1 decimal: 365.8 mm",
        "  n = 432: ends",
        "  S = 30 per inch: ends in the reed",
        "  source: by definition",
      ].join("\n"),
    );
  });

  it("gives it as TeX", () => {
    expect(explain(width).tex).toBe(
      "W = \\frac{n}{S} = \\frac{432}{30\\,\\mathrm{in}^{-1}} \\approx 365.8\\,\\mathrm{mm}",
    );
  });

  it("gives it as data", () => {
    expect(explain(width).data).toEqual({
      formula: "width-in-reed",
      title: "width in the reed",
      symbol: "W",
      expression: "n / S",
      values: [
        { symbol: "n", meaning: "ends", values: [quantity(432, "")] },
        { symbol: "S", meaning: "ends in the reed", values: [quantity(30, "per inch")] },
      ],
      result: { value: width.value, unit: "mm", kind: "length" },
      decimals: 1,
      rounded: quantity(365.8, "mm"),
      source: "by definition",
    });
  });

  it("shows a sum as its terms", () => {
    const yarn = calculate("tex-of-unlike-plies", { T_i: ["20 tex", "30 tex"] });
    expect(explain(yarn).text).toContain("T = ((20 tex) + (30 tex)) / (1 - (0 %)) = 50 tex");
    expect(explain(yarn).tex).toContain("\\sum T_{i}");
  });

  it("never takes a usual value without saying so", () => {
    const before = calculate("size-before-shrinkage", { f: "90 cm" });
    expect(explain(before).text).toContain(
      "s = 10 %: shrinkage in the wash (assumed: handweaver's allowance, common practice)",
    );
    expect(explain(before).data.values[1]).toMatchObject({
      assumed: "handweaver's allowance, common practice",
    });
    expect(explain(calculate("size-before-shrinkage", { f: "90 cm", s: "10 %" })).text).not.toContain(
      "assumed",
    );
  });

  it("leads back to what a result was worked out from", () => {
    const dents = calculate("dents-of-reed-count", { N: 12, d: 1, l: "1 in" });
    const sett = calculate("sett-in-reed", { D: dents, e: 2 });
    const found = calculate("width-in-reed", { n: 100, S: sett });
    expect(steps(found)).toEqual([dents, sett, found]);
    expect(explain(found).data.values[1]!.from).toBe("sett-in-reed");
  });

  it.each(all)("%s explains itself", (id, formula) => {
    fc.assert(
      fc.property(valuesFor(formula), (values) => {
        const found = attempt(id, values);
        if (found instanceof YarnError) return;
        const { text, tex, data } = explain(found);
        expect(text).toContain(`source: ${formula.source}`);
        expect(`${text}${tex}`).not.toMatch(/undefined|NaN|\[object/);
        for (const [name, { meaning }] of Object.entries(formula.symbols))
          expect(text).toMatch(new RegExp(`^  ${name} = .*: ${meaning.replace(/[()]/g, "\\$&")}`, "m"));
        // The rounding is that of the result.
        expect(Math.abs(data.rounded.value - found.value)).toBeLessThanOrEqual(
          0.5000001 * 10 ** -formula.result.decimals + 1e-9 * Math.abs(found.value),
        );
        expect(rounded(found)).toEqual(data.rounded);
        // Braces are balanced, so that it can be typeset.
        expect(tex.split("{").length).toBe(tex.split("}").length);
        for (const [, command] of tex.matchAll(/\\([a-zA-Z]+)/g)) expect(texCommands).toContain(command);
      }),
      { numRuns: 10 },
    );
  });
});

/** mathjs whole, with the units that it lacks: it knows nothing of our trees. */
function mathjs() {
  const math = create(allOfMathjs!);
  math.createUnit({ tex: "1 mg/m", dtex: "0.1 mg/m", denier: "0.1111111111111111 mg/m" });
  return math;
}

const named: Readonly<Partial<Record<UnitName, string>>> = {
  in: "inch",
  ft: "foot",
  yd: "yard",
  gr: "grain",
  oz: "ounce",
  lb: "lbm",
  "per cm": "cm^-1",
  "per 10 cm": "dm^-1",
  "per inch": "inch^-1",
  den: "denier",
  "g/m2": "g/m^2",
  "oz/yd2": "ounce/yard^2",
  "g/cm3": "g/cm^3",
};

describe("against mathjs, which carries the units itself", () => {
  const math = mathjs();

  /** What mathjs sees of a quantity. */
  const seen = (spec: SymbolSpec, value: Quantity): unknown => {
    if (spec.bare !== undefined) return convert(value, spec.bare).value;
    if (spec.kind === "number") return value.value;
    if (spec.kind === "share") return value.value / 100;
    return math.unit(value.value, named[value.unit] ?? value.unit);
  };

  it.each(all)("%s comes to the same value and unit", (id, formula) => {
    let worked = 0;
    fc.assert(
      fc.property(valuesFor(formula), (values) => {
        const ours = attempt(id, values);
        if (ours instanceof YarnError) return;
        worked++;
        const scope = Object.fromEntries(
          Object.entries(values).map(([name, value]) => {
            const spec = formula.symbols[name]!;
            return [name, Array.isArray(value) ? value.map((one) => seen(spec, one)) : seen(spec, value)];
          }),
        );
        const theirs = math.evaluate(formula.expression, scope) as
          | number
          | { toNumber(unit: string): number };
        const { bare, kind } = formula.result;
        const found =
          typeof theirs === "number"
            ? bare === undefined
              ? theirs * (kind === "share" ? 100 : 1)
              : convert(quantity(theirs, bare), ours.unit).value
            : theirs.toNumber(named[ours.unit] ?? ours.unit);
        if (typeof theirs === "number" && bare === undefined) expect(["number", "share"]).toContain(kind);
        // Where sums are taken away from each other, or a number tips over to the next whole one, the last digits differ.
        const whole = /floor|ceil|round/.test(formula.expression) ? 1 : 0;
        const largest = / - /.test(formula.expression) ? 1e6 : 0;
        expect(Math.abs(ours.value - found)).toBeLessThanOrEqual(
          whole + 1e-9 * Math.max(largest, Math.abs(found)),
        );
      }),
      { numRuns: 60 },
    );
    expect(worked).toBeGreaterThan(5);
  });

  it.each(all)("%s measures what its result does", (id, formula) => {
    const symbols = Object.fromEntries(
      Object.entries(formula.symbols).map(([name, { bare, kind }]) => [
        name,
        dimensions[bare === undefined ? kind : "number"],
      ]),
    );
    // A formula with a constant of its own, as the root rule has, gives a bare number.
    const bare = formula.result.bare !== undefined;
    expect(dimensionOf(trees[id], symbols)).toEqual(dimensions[bare ? "number" : formula.result.kind]);
  });

  it("knows tex, dtex and denier as we do", () => {
    near(calculate("length-of-mass", { m: "1 g", T: "1 tex" }).value, 1000);
    near(calculate("length-of-mass", { m: "1 g", T: "10 dtex" }).value, 1000);
    near(calculate("length-of-mass", { m: "1 g", T: "9 den" }).value, 1000);
  });
});
