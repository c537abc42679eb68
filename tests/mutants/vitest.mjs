/** What the tests of a package ask of vitest, kept for `loadTests` instead of run at once. */
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
} from "@vitest/expect";
import * as chai from "chai";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);

/** @type {{ id: string, name: string, run: () => unknown }[]} */
export const collected = [];

let path = [];

/** Takes down what a file of tests holds. */
export async function inFile(file, read) {
  path = [file];
  await read();
}

/** The function among what a test is given: its options may stand before it, or its time after. */
const bodyOf = (rest) => rest.find((part) => typeof part === "function");

export function it(name, ...rest) {
  const id = `${[...path, name].join(" > ")} #${collected.length}`;
  collected.push({ id, name: id, run: bodyOf(rest) });
}

export function describe(name, ...rest) {
  path.push(name);
  bodyOf(rest)();
  path.pop();
}

const each =
  (of) =>
  (rows) =>
  (name, ...rest) => {
    for (const row of rows) {
      const values = Array.isArray(row) ? row : [row];
      of(`${name} ${values.map(String).join(", ").slice(0, 60)}`, () => bodyOf(rest)(...values));
    }
  };
it.each = each(it);
describe.each = each(describe);
