import { expect } from "vitest";

/** Two numbers are the same but for rounding on the way. */
export function near(found: number, expected: number, relative = 1e-11): void {
  expect(Math.abs(found - expected), `${found} against ${expected}`).toBeLessThanOrEqual(
    relative * Math.max(Math.abs(expected), 1e-9),
  );
}
