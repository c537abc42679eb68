import type { Facts } from "@drawcord/base";
import { expect } from "vitest";
import { ChartError, type ChartErrorCode } from "../src/index.js";

/** Expects `run` to be refused with `code`, facts that include `facts`, and a sentence that says `sentence`. */
export function expectRefusal(
  run: () => unknown,
  code: ChartErrorCode,
  sentence: string | RegExp,
  facts: Facts = {},
): void {
  let caught: unknown;
  try {
    run();
  } catch (error) {
    caught = error;
  }
  expect(caught).toBeInstanceOf(ChartError);
  const error = caught as ChartError;
  expect(error.message).toMatch(sentence);
  expect(error.code).toBe(code);
  expect(error.facts).toMatchObject(facts);
}
