import { calculate, type FormulaId, type FormulaTree, formulaOf, formulas } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { formulaBox } from "../../page/src/formula/boxes.js";
import { toMathml } from "../../page/src/formula/mathml.js";
import { formulaText } from "../../page/src/formula/text.js";
import { operator, quantityLetters, row, symbolLetters, typeset, word } from "../src/formula/typeset.js";

/** A formula in its letters. */
const set = (tree: FormulaTree) => typeset(tree, { symbol: symbolLetters, sum: symbolLetters });

describe("a formula from its tree", () => {
  it.each<[FormulaTree, string]>([
    [["/", "n", "S"], "n / S"],
    [["/", ["+", "f", "h"], ["-", 1, "s"]], "(f + h) / (1 − s)"],
    [["*", ["-", "N", 1], "g"], "(N − 1) g"],
    [["*", "c", ["+", 1, "k"]], "c · (1 + k)"],
    [["sqrt", ["/", ["*", 4, "T"], ["*", ["*", "pi", "phi"], "rho"]]], "√((4 T) / (π φ ρ))"],
    [["*", ["^", "F", "m"], ["sqrt", ["*", "K", "N"]]], "F^m √(K N)"],
    [["ceil", ["/", "m", "q"]], "⌈m / q⌉"],
    [["*", ["max", 0, ["-", "N", 1]], "g"], "max(0, N − 1) g"],
    ["T_1", "T_1"],
    [["negative", "h"], "−h"],
  ])("%j is set as %s", (tree, text) => {
    expect(formulaText(set(tree))).toBe(text);
  });

  it("of every formula has all of its symbols", () => {
    for (const id of Object.keys(formulas) as FormulaId[]) {
      const letters = formulaText(
        set(formulaOf({ ...calculate("width-in-reed", { n: 1, S: "1 per cm" }), formula: id }).tree),
      );
      for (const symbol of Object.keys(formulas[id].symbols))
        expect(letters).toContain(symbol.replace("phi", "φ").replace("rho", "ρ"));
    }
  });

  it("has its values with their units", () => {
    expect(formulaText(quantityLetters({ value: 24, unit: "per inch", kind: "sett" }))).toBe("24 per inch");
    expect(formulaText(quantityLetters({ value: 540, unit: "", kind: "number" }))).toBe("540");
  });

  it("is set as MathML in which every digit is in place", () => {
    expect(toMathml(set(["/", 540, 36]))).toBe(
      '<math displaystyle="true"><mfrac><mn>540</mn><mn>36</mn></mfrac></math>',
    );
  });
});

describe("a formula in type", () => {
  it("is as wide as the wider side of a fraction, and as tall as both", () => {
    const over = formulaBox(set(5000), 4);
    const both = formulaBox(set(["/", 5000, 2]), 4);
    expect(both.width).toBeGreaterThan(over.width * 0.92);
    expect(both.above + both.below).toBeGreaterThan((over.above + over.below) * 1.5);
  });

  it("keeps a minus apart from the bracket before it, and a sign close to what it belongs to", () => {
    const bracket = formulaBox(row([operator("("), word("s", true), operator(")")]), 4).width;
    const alone = formulaBox(word("h", true), 4).width;
    const minus = formulaBox(operator("−"), 4).width;
    expect(
      formulaBox(row([operator("("), word("s", true), operator(")"), operator("−"), word("h", true)]), 4)
        .width,
    ).toBeCloseTo(bracket + minus + alone, 6);
    expect(formulaBox(row([operator("−"), word("h", true)]), 4).width).toBeLessThan(minus + alone);
    expect(
      formulaBox(row([operator("("), word("s", true), operator(")"), word("h", true)]), 4).width,
    ).toBeGreaterThan(bracket + alone);
  });

  it("keeps all of its letters", () => {
    const texts = (shapes: ReturnType<typeof formulaBox>["shapes"]): string[] =>
      shapes.flatMap((shape) =>
        shape.kind === "text" ? [shape.text] : shape.kind === "group" ? texts(shape.shapes) : [],
      );
    expect(
      texts(
        formulaBox(row([word("D", true), operator("="), set(["*", "k", ["sqrt", ["/", "Y", 2]]])]), 4).shapes,
      ),
    ).toEqual(["D", "=", "k", "Y", "2"]);
  });
});
