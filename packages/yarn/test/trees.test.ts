import { expect, it } from "vitest";
import { parseExpression } from "../src/formula/parse-expression.js";
import { printText } from "../src/formula/print.js";
import type { FormulaSet } from "../src/formula/types.js";
import { countFormulas } from "../src/formulas/counts.js";
import { crimpFormulas } from "../src/formulas/crimp.js";
import { diameterFormulas } from "../src/formulas/diameter.js";
import { firmnessFormulas } from "../src/formulas/firmness.js";
import { lengthFormulas } from "../src/formulas/length.js";
import { pieceFormulas } from "../src/formulas/piece.js";
import { reedFormulas } from "../src/formulas/reed.js";
import { formulas } from "../src/formulas/registry.js";
import { sampleFormulas } from "../src/formulas/sample.js";
import { settFormulas } from "../src/formulas/sett.js";
import { warpingFormulas } from "../src/formulas/warping.js";
import { weightFormulas } from "../src/formulas/weight.js";

const sets: Readonly<Record<string, FormulaSet>> = {
  countTrees: countFormulas,
  diameterTrees: diameterFormulas,
  settTrees: settFormulas,
  firmnessTrees: firmnessFormulas,
  reedTrees: reedFormulas,
  crimpTrees: crimpFormulas,
  pieceTrees: pieceFormulas,
  lengthTrees: lengthFormulas,
  weightTrees: weightFormulas,
  sampleTrees: sampleFormulas,
  warpingTrees: warpingFormulas,
};

/** The module that ships: what mathjs reads in each formula's expression, as data. */
function treesModule(): string {
  const parts = Object.entries(sets).flatMap(([name, set]) => [
    `export const ${name} = {`,
    ...Object.entries(set).map(
      ([id, { expression }]) => `  "${id}": ${JSON.stringify(parseExpression(expression))},`,
    ),
    "} as const satisfies Trees;",
    "",
  ]);
  return [
    "/**",
    " * The expressions of the formulas as mathjs reads them. Written by `npm run formulas` and held to the formulas by a test:",
    " * what is worked out and printed is this, and mathjs is not loaded for it.",
    " */",
    'import type { FormulaTree } from "../formula/tree.js";',
    "",
    "type Trees = Readonly<Record<string, FormulaTree>>;",
    "",
    ...parts,
  ].join("\n");
}

it("every formula is in a set", () => {
  expect(Object.values(sets).flatMap(Object.keys).sort()).toEqual(Object.keys(formulas).sort());
});

it("the trees that ship are what mathjs reads in the formulas", async () => {
  await expect(treesModule()).toMatchFileSnapshot("../src/formulas/trees.ts");
});

it.each(Object.entries(formulas))("%s is printed from its tree as it was written", (_, { expression }) => {
  const printed = printText(parseExpression(expression), {
    symbol: (name) => name,
    sum: (name) => `sum(${name})`,
  });
  expect(printed).toBe(expression.replaceAll(" * ", " × "));
});
