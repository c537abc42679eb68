import { expect } from "vitest";
import { refusalBy } from "../../../tests/support/refusal.js";
import { GroundError, type GroundErrorCode } from "../src/index.js";

/** Expects `run` to be refused with `code` and exactly this sentence. */
export function expectRefusal(run: () => unknown, code: GroundErrorCode, sentence: string): void {
  const error = refusalBy(run, GroundError);
  expect(error.message).toBe(sentence);
  expect(error.code).toBe(code);
}
