import { expect } from "vitest";
import { GroundError, type GroundErrorCode } from "../src/index.js";

/** Expects `run` to be refused with `code` and exactly this sentence. */
export function expectRefusal(run: () => unknown, code: GroundErrorCode, sentence: string): void {
  let caught: unknown;
  try {
    run();
  } catch (error) {
    caught = error;
  }
  expect(caught).toBeInstanceOf(GroundError);
  const error = caught as GroundError;
  expect(error.message).toBe(sentence);
  expect(error.code).toBe(code);
}
