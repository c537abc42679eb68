import { calculate, explain, type FormulaId, formulas } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { formulaBox } from "../../page/src/formula/boxes.js";
import { toMathml } from "../../page/src/formula/mathml.js";
import { formulaText } from "../../page/src/formula/text.js";
import { readTex, sides } from "../src/formula/read-tex.js";

describe("a working in TeX", () => {
  it.each([
    ["W = \\frac{n}{ S}", "W = n / S"],
    ["c=\\frac{\\left( f+ h\\right)}{\\left(1- s\\right)}", "c = (f + h) / (1 − s)"],
    ["d = \\sqrt{\\frac{4~ T}{\\pi~\\phi~\\rho}}", "d = √((4 T) / (π φ ρ))"],
    ["F^{ m}\\cdot\\sqrt{ K~ N}", "F^m · √(K N)"],
    ["\\left\\lceil m\\right\\rceil", "⌈m⌉"],
    ["\\max\\left(0, N-1\\right) g", "max(0, N − 1) g"],
    ["12\\,\\mathrm{cm}^{-1}", "12 cm^(−1)"],
    ["T_{1}", "T_1"],
    ["\\mathit{CFF}", "CFF"],
  ])("%s is read as %s", (tex, text) => {
    expect(formulaText(readTex(tex))).toBe(text);
  });

  it("of every formula has a left side, the formula, its numbers and a result", () => {
    const ids = Object.keys(formulas) as FormulaId[];
    expect(ids.length).toBeGreaterThan(30);
    const { tex, data } = explain(calculate("width-in-reed", { n: 564, S: "40 per inch" }));
    const parts = sides(readTex(tex)).map(formulaText);
    expect(parts.slice(0, 3)).toEqual(["W", "n / S", "564 / (40 in^(−1))"]);
    expect(parts[3]).toContain("358.1 mm");
    expect(data.rounded.value).toBe(358.1);
  });

  it("is set as MathML in which every digit is in place", () => {
    expect(toMathml(readTex("W = \\frac{564}{40}"))).toBe(
      '<math displaystyle="true"><mrow><mi>W</mi><mo>=</mo><mfrac><mn>564</mn><mn>40</mn></mfrac></mrow></math>',
    );
  });
});

describe("a formula in type", () => {
  it("is as wide as the wider side of a fraction, and as tall as both", () => {
    const over = formulaBox(readTex("5000"), 4);
    const both = formulaBox(readTex("\\frac{5000}{2}"), 4);
    expect(both.width).toBeGreaterThan(over.width * 0.92);
    expect(both.above + both.below).toBeGreaterThan((over.above + over.below) * 1.5);
  });

  it("keeps a minus apart from the bracket before it, and a sign close to what it belongs to", () => {
    const bracket = formulaBox(readTex("(s)"), 4).width;
    const alone = formulaBox(readTex("h"), 4).width;
    const minus = formulaBox(readTex("-"), 4).width;
    expect(formulaBox(readTex("(s)-h"), 4).width).toBeCloseTo(bracket + minus + alone, 6);
    expect(formulaBox(readTex("-h"), 4).width).toBeLessThan(minus + alone);
    expect(formulaBox(readTex("(s)h"), 4).width).toBeGreaterThan(bracket + alone);
  });

  it("keeps all of its letters", () => {
    const texts = (shapes: ReturnType<typeof formulaBox>["shapes"]): string[] =>
      shapes.flatMap((shape) =>
        shape.kind === "text" ? [shape.text] : shape.kind === "group" ? texts(shape.shapes) : [],
      );
    expect(texts(formulaBox(readTex("D = k\\sqrt{\\frac{Y}{2}}"), 4).shapes)).toEqual([
      "D",
      "=",
      "k",
      "Y",
      "2",
    ]);
  });
});
