/** Formulas of one's own in a recipe. */
import { explain, metric } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";
import { FileError, ownNumbers, readRecipe, soundRecipe, writeRecipe } from "../../src/index.js";
import { leastRecipe, wholeRecipe } from "../samples.js";

const cloth = `${leastRecipe}yarns: { warp: { count: 20 tex }, weft: { count: 20 tex } }
cloth: { sett: 10 per cm, picks: 10 per cm, draw-in: 0 %, take-up: 0 %, shrinkage: 0 % }
project: { pieces: 3, length: 20 cm, waste: 40 cm }
`;

/** A recipe with one formula of two symbols. */
const withFormula = (formula: string, symbols: string, more = "") =>
  `${cloth}formulas:\n  - title: own\n    formula: ${formula}\n    symbols: ${symbols}\n${more}`;

const refused = async (text: string) => {
  const failure: unknown = await ownNumbers(soundRecipe(text, "r")).catch((error: unknown) => error);
  expect(failure).toBeInstanceOf(FileError);
  return (failure as FileError).problems.map(
    ({ code, column, line, sentence }) => `${line}:${column} ${code} ${sentence}`,
  );
};

const price = "{ m: { meaning: yarn, plan: warp-length, in: m }, c: { meaning: price of 1 m, value: 0.5 } }";

describe("a formula of one's own", () => {
  it("is worked out with the numbers of the plan, its working printed like any other", async () => {
    const [own, ...others] = await ownNumbers(soundRecipe(withFormula("m c", price, "    symbol: P\n"), "r"));
    expect(others).toEqual([]);
    // Three pieces of 20 cm and 40 cm of waste make a warp of one metre.
    expect(metric(own!.value)).toMatchObject({ value: 0.5, kind: "number" });
    expect(explain(own!.value).text.split("\n").slice(0, 3)).toEqual([
      "own",
      "  P = m c",
      expect.stringContaining("= 0.5"),
    ]);
  });

  it("carries units where none is named, and may use a formula before it", async () => {
    const text = withFormula(
      "L * (1 + k)",
      "{ L: { meaning: warp, plan: warp-length }, k: { meaning: more, value: 50 % } }",
      "    unit: m\n  - title: twice\n    formula: 2 a\n    symbols: { a: { meaning: the first, plan: own } }\n    unit: cm\n",
    );
    const numbers = await ownNumbers(soundRecipe(text, "r"));
    expect(numbers.map(({ title, value }) => [title, value.value, value.unit])).toEqual([
      ["own", 1.5, "m"],
      ["twice", 300, "cm"],
    ]);
  });

  it("comes back as it was written", async () => {
    const recipe = soundRecipe(wholeRecipe, "r");
    expect(recipe.formulas).toHaveLength(2);
    const again = soundRecipe(writeRecipe(recipe), "r");
    expect(again.formulas).toEqual(recipe.formulas);
    const values = (await ownNumbers(again)).map(({ value }) => value.value);
    expect(values).toEqual((await ownNumbers(recipe)).map(({ value }) => value.value));
  });

  it("is no number where there is none", async () => {
    expect(await ownNumbers(soundRecipe(leastRecipe, "r"))).toEqual([]);
  });

  it.each<[formula: string, symbols: string, problem: RegExp]>([
    ["m c +", price, /^10:19 bad-notation formulas, item 1\.formula: "m c \+" is not a formula: /],
    ["m c q", price, /^10:14 bad-notation .*"q" is not among its symbols; they are m, c$/],
    ["m", price, /^10:14 .*its symbol "c" does not stand in m$/],
    [
      "m c",
      price.replace("warp-length", "warp-lenght"),
      /^11:\d+ .*symbols\.m\.plan: the plan has no number "warp-lenght"; did you mean "warp-length"\?$/,
    ],
    [
      "m c",
      price.replace("warp-length", "zzzzzzzzzzz"),
      /the plan has no number "zzzzzzzzzzz"; it has ends, units/,
    ],
    ["m c", price.replace("in: m", "in: g"), /^10:14 .*is not a weight/],
    ["m c / (c - c)", price, /^10:14 /],
  ])("%s is refused at its place", async (formula, symbols, problem) => {
    expect(await refused(withFormula(formula, symbols))).toEqual([expect.stringMatching(problem)]);
  });

  it("of which several are wrong are told all", async () => {
    const two = `${withFormula("m +", price)}  - { title: b, formula: n, symbols: { n: { meaning: x, plan: nothing } } }\n`;
    expect(await refused(two)).toHaveLength(2);
  });

  it.each([
    [
      "title: own, formula: a, symbols: { a: { meaning: x, value: 1, plan: ends } }",
      /exactly one|only one|not both/,
    ],
    ["title: own, formula: a, symbols: { a: { meaning: x } }", /value|plan/],
    ["title: own, formula: a, symbols: { a: { meaning: x, value: 3 furlongs } }", /furlongs/],
    ["title: own, formula: a, symbols: { a: { meaning: x, value: 1 } }, unit: furlongs", /furlongs/],
    ["title: own, formula: a, symbols: {}", /symbols/],
    ["title: own, formula: a, symbols: { a: { meaning: x, value: 1 } }, decimals: 1.5", /decimals/],
    ["title: own, formula: a, symbols: { a: { meaning: x, value: 1 } }, colour: red", /colour/],
  ])("{ %s } cannot be read", (of, why) => {
    const { problems } = readRecipe(`${cloth}formulas: [{ ${of} }]\n`, "r");
    expect(problems.map(({ sentence }) => sentence).join("\n")).toMatch(why);
    expect(problems.every(({ line }) => line === 8)).toBe(true);
  });

  it("has a title of its own", () => {
    const one = "{ title: own, formula: a, symbols: { a: { meaning: x, value: 1 } } }";
    expect(readRecipe(`${cloth}formulas: [${one}, ${one}]\n`, "r").problems).toMatchObject([
      { code: "bad-value", sentence: expect.stringContaining("the same title") },
    ]);
  });

  it.each([
    ["import({ a: 1 })", "import({ a: 1 })"],
    ['createUnit("foo")', 'createUnit("foo")'],
    ["f(x) = x", "f(x) = x"],
    ["a = 3", "a = 3"],
    ["a; a", "a; a"],
    ['evaluate("1")', 'evaluate("1")'],
    ["a.constructor", "a.constructor"],
    ["a[1]", "a[1]"],
    ["constructor", "constructor"],
    ["__proto__", "__proto__"],
    ["toString", "toString"],
    ["cos(a)", "cos(a)"],
    ["'a'", "'a'"],
    ["{ a: 1 }", "{ a: 1 }"],
    ["a ? 1 : 2", "a ? 1 : 2"],
    ["three thousand brackets", `${"(".repeat(3000)}a${")".repeat(3000)}`],
  ])("that holds more than arithmetic is refused: %s", async (_, formula) => {
    const text = withFormula(JSON.stringify(formula), "{ a: { meaning: x, value: 1 } }");
    expect(await refused(text)).toHaveLength(1);
  });

  it("may have symbols of any name, and they stand for nothing else", async () => {
    const with2 = (name: string) => withFormula(`2 * ${name}`, `{ ${name}: { meaning: x, value: 3 } }`);
    for (const name of ["constructor", "toString", "hasOwnProperty", "e", "i", "sqrt", "sum", "in", "to"]) {
      const [own] = await ownNumbers(soundRecipe(with2(name), "r"));
      expect([name, own!.value.value]).toEqual([name, 6]);
    }
    for (const name of ["__proto__", "pi", "true"]) expect(await refused(with2(name))).toHaveLength(1);
    expect(({} as Record<string, unknown>)["meaning"]).toBeUndefined();
  });
});
