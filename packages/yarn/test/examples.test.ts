import { expect, it } from "vitest";
import * as near from "../src/nearest.js";
import * as numbers from "../src/quantity/number.js";
import * as read from "../src/quantity/read.js";
import * as quantityEntry from "../src/quantity.js";
import { docstringExamples, evaluateExample } from "./examples.js";

const names = { ...quantityEntry, ...numbers, ...read, ...near };
const examples = docstringExamples();

it("the docstrings hold examples", () => {
  expect(examples.length).toBeGreaterThan(7);
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
