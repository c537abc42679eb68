import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Formula, SymbolSpec } from "../src/formula/types.js";
import {
  calculate,
  convert,
  explain,
  type FormulaId,
  formulas,
  metricUnit,
  type Quantity,
  quantity,
  type Result,
  rounded,
  steps,
  YarnError,
} from "../src/index.js";
import { instance, parse } from "../src/math.js";
import { length, unitOf } from "./arbitraries.js";
import { near } from "./near.js";

const all = Object.entries(formulas) as [FormulaId, Formula][];

/** A value that fits a symbol, in one of the units of its kind. */
function valueFor(spec: SymbolSpec): fc.Arbitrary<Quantity> {
  const unit = spec.bare ?? metricUnit[spec.kind];
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
    ? value.map((one) => convert(one, metricUnit[one.kind]))
    : convert(value, metricUnit[value.kind]);

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
  it.each(all)("%s uses its symbols and no others, and has a source", (_, formula) => {
    const used = new Set<string>();
    parse(formula.expression).traverse((node) => {
      const { isSymbolNode, name } = node as { isSymbolNode?: boolean; name?: string };
      if (isSymbolNode && !["sqrt", "sum", "round", "floor", "ceil", "max", "pi"].includes(name!))
        used.add(name!);
    });
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
  const width = calculate("width-in-reed", { n: 564, S: "40 per inch" });

  it("gives formula, substitution with units, result, rounding, values and source as text", () => {
    expect(explain(width).text).toBe(
      [
        "width in the reed",
        "  W = n / S",
        "  W = 564 / (40 per inch) = 358.14 mm = 14.1 in",
        "  to 1 decimal: 358.1 mm",
        "  n = 564: ends",
        "  S = 40 per inch: ends in the reed",
        "  source: by definition",
      ].join("\n"),
    );
  });

  it("gives it as TeX", () => {
    expect(explain(width).tex).toBe(
      "W = \\frac{n}{S} = \\frac{564}{40\\,\\mathrm{in}^{-1}} \\approx 358.1\\,\\mathrm{mm}",
    );
  });

  it("gives it as data", () => {
    expect(explain(width).data).toEqual({
      formula: "width-in-reed",
      title: "width in the reed",
      symbol: "W",
      expression: "n / S",
      values: [
        { symbol: "n", meaning: "ends", values: [quantity(564, "")] },
        { symbol: "S", meaning: "ends in the reed", values: [quantity(40, "per inch")] },
      ],
      result: { value: width.value, unit: "mm", kind: "length" },
      decimals: 1,
      rounded: quantity(358.1, "mm"),
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

describe("the instance of mathjs", () => {
  it.each(["import", "createUnit", "evaluate", "parse", "compile"])("has %s switched off", (name) => {
    const { [name]: off } = instance() as Record<string, (...given: unknown[]) => unknown>;
    expect(() => off!("1 + 1")).toThrow(`${name} is switched off`);
  });

  it("knows what the formulas use and nothing of matrices, statistics or algebra", () => {
    const names = Object.keys(instance());
    expect(names).toEqual(expect.arrayContaining(["add", "multiply", "sqrt", "floor", "ceil", "sum", "max"]));
    expect(names).not.toEqual(expect.arrayContaining(["inv"]));
    for (const foreign of ["matrix", "mean", "simplify", "derivative", "random"]) {
      const { [foreign]: found } = instance();
      if (found !== undefined)
        expect(() => (found as () => void)()).toThrow(/switched off|No "matrix" implementation/);
    }
  });

  it("knows tex, dtex and denier", () => {
    near(calculate("length-of-mass", { m: "1 g", T: "1 tex" }).value, 1000);
    near(calculate("length-of-mass", { m: "1 g", T: "10 dtex" }).value, 1000);
    near(calculate("length-of-mass", { m: "1 g", T: "9 den" }).value, 1000);
  });
});
