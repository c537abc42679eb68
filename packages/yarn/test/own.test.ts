import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseExpression } from "../src/formula/parse-expression.js";
import { evaluate } from "../src/formula/tree.js";
import { explain, type OwnFormula, parseFormula, workOutOwn } from "../src/index.js";

const price: OwnFormula = {
  title: "price of the yarn",
  expression: "m c / 100",
  symbols: {
    m: { meaning: "weight of yarn", unit: "g", bare: true },
    c: { meaning: "price of 100 g", unit: "" },
  },
  symbol: "P",
};

const thread: OwnFormula = {
  title: "thread of a hem",
  expression: "sum(b_i) * (1 + k) s",
  symbols: {
    b_i: { meaning: "widths hemmed", unit: "cm" },
    k: { meaning: "take-up of the stitches", unit: "%" },
    s: { meaning: "rows of stitches", unit: "" },
  },
  symbol: "L",
  unit: "m",
};

describe("a formula of the user's own", () => {
  it("is worked out with its units, and its working printed as for any other", async () => {
    const found = workOutOwn(await parseFormula(thread), { b_i: ["40 cm", "10 in"], k: "50 %", s: 2 });
    expect(found.value).toBeCloseTo(1.962, 9);
    expect(explain(found).text.split("\n").slice(0, 2)).toEqual([
      "thread of a hem",
      "  L = sum(b_i) × (1 + k) s",
    ]);
    expect(explain(found).tex).toContain("L = \\sum b_{i} \\cdot \\left(1 + k\\right)~s");
  });

  it("takes the bare number where one is priced", async () => {
    expect(workOutOwn(await parseFormula(price), { m: "1 kg", c: 4.2 }).value).toBeCloseTo(42, 9);
  });

  it.each<[Partial<OwnFormula>, RegExp]>([
    [{ expression: "m +" }, /is not a formula/],
    [{ expression: "m c q" }, /"q" is not among its symbols; they are m, c/],
    [{ expression: "m" }, /its symbol "c" does not stand in m/],
    [{ unit: "cm" }, /does not measure a length/],
    [{ decimals: 1.5 }, /not a number of decimals/],
  ])("%o is refused with the reason", async (change, why) => {
    await expect(parseFormula({ ...price, ...change })).rejects.toThrow(why);
  });

  it("adds only like to like", async () => {
    const unlike: OwnFormula = { ...thread, expression: "(sum(b_i) + k) s" };
    await expect(parseFormula(unlike)).rejects.toThrow(/"\+" of things of unlike kinds/);
  });
});

describe("an expression", () => {
  it.each([
    "import({})",
    'import("x")',
    'createUnit("x")',
    "f(x) = x",
    "x = 3",
    "a; b",
    "a.b",
    "[1, 2]",
    '"text"',
    "m(1 + k)",
    "a ? b : c",
    "a == b",
    "a!",
    "3 cm to in",
    "1:3",
    "{a: 1}",
    "max(1, 2, 3)",
    "cos(x)",
  ])("%s is no formula", (text) => {
    expect(() => parseExpression(text)).toThrow(expect.objectContaining({ code: "bad-formula" }));
  });

  it("says in which column reading stopped", () => {
    expect(() => parseExpression("m / )")).toThrow(
      expect.objectContaining({ facts: { text: "m / )", column: 5 } }),
    );
  });

  it("of any text is read or refused", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."ab1.+-*/^(),= sqrtmax") }), (text) => {
        try {
          const tree = parseExpression(text);
          expect(typeof evaluate(tree, new Proxy({}, { get: () => 1 }))).toBe("number");
        } catch (failure) {
          expect(failure).toMatchObject({ code: "bad-formula" });
        }
      }),
      { numRuns: 300 },
    );
  });
});
