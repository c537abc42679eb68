import { expect } from "vitest";
import { UnitsError, type UnitsErrorCode, type UnitsFacts } from "../src/index.js";

/** Expects `run` to be refused with `code`, facts that include `facts`, and a sentence that says `sentence`. */
export function expectRefusal(
  run: () => unknown,
  code: UnitsErrorCode,
  sentence: string | RegExp,
  facts: UnitsFacts = {},
): void {
  let caught: unknown;
  try {
    run();
  } catch (error) {
    caught = error;
  }
  expect(caught).toBeInstanceOf(UnitsError);
  const error = caught as UnitsError;
  expect(error.message).toMatch(sentence);
  expect(error.code).toBe(code);
  expect(error.facts).toMatchObject(facts);
}
