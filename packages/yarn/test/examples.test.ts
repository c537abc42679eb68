import { expect, it } from "vitest";
import * as calculating from "../src/formula/calculate.js";
import * as texing from "../src/formula/tex.js";
import * as yarn from "../src/index.js";
import * as math from "../src/math.js";
import * as near from "../src/nearest.js";
import * as numbers from "../src/quantity/number.js";
import * as read from "../src/quantity/read.js";
import * as threads from "../src/sett/interlacing.js";
import { docstringExamples, evaluateExample } from "./examples.js";
import { plain } from "./weaves.js";

const names = {
  ...yarn,
  ...numbers,
  ...read,
  ...near,
  ...math,
  ...texing,
  ...calculating,
  ...threads,
  plain,
};
const examples = docstringExamples();

it("the docstrings hold examples", () => {
  expect(examples.length).toBeGreaterThan(40);
});

it.each(examples)("$where: $code", ({ code, expected }) => {
  const found = evaluateExample(code, names);
  if (typeof found === "number") expect(found).toBeCloseTo(Number(expected), decimals(expected));
  else expect(found).toEqual(evaluateExample(expected, names));
});

/** How many digits after the point the example prints. */
function decimals(text: string): number {
  return text.split(".")[1]?.length ?? 0;
}
