import { describe, expect, it } from "vitest";
import { irregularSatins, satinOrder, satinSteps } from "../src/index.js";
import { expectRefusal } from "./expect-error.js";

describe("the steps of a satin", () => {
  // A. Wolfensberger, Theory of Silk Weaving, 1921, p. 33: one of each mirror pair.
  it.each([
    [3, []],
    [4, []],
    [5, [2]],
    [6, []],
    [7, [2, 3]],
    [8, [3]],
    [9, [2, 4]],
    [10, [3]],
    [11, [2, 3, 4, 5]],
    [12, [5]],
    [13, [2, 3, 4, 5, 6]],
    [14, [3, 5]],
    [15, [2, 4, 7]],
    [16, [3, 5, 7]],
  ])("on %i ends are %j and their mirrors", (ends, steps) => {
    expect(satinSteps(ends)).toEqual([...steps, ...steps.map((step) => ends - step).reverse()]);
  });

  it("number phi(n)/2 - 1 on n ends, mirrors apart", () => {
    for (let ends = 3; ends <= 64; ends++) {
      expect(satinSteps(ends).length / 2).toBe(totient(ends) / 2 - 1);
    }
  });
});

describe("the order of a satin", () => {
  it("is the handbook's on 5 and on 8 ends", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 223-225.
    expect(satinOrder(5, 2)).toEqual([1, 3, 5, 2, 4]);
    expect(satinOrder(8, 3)).toEqual([1, 4, 7, 2, 5, 8, 3, 6]);
  });

  it("binds every end once, each one step further than the last", () => {
    for (let ends = 5; ends <= 24; ends++) {
      for (const step of satinSteps(ends)) {
        const order = satinOrder(ends, step, 3);
        expect(order[0]).toBe(3);
        expect(new Set(order).size).toBe(ends);
        order.forEach((end, pick) => {
          const next = order[(pick + 1) % ends]!;
          expect((next - end - step) % ends === 0).toBe(true);
        });
      }
    }
  });

  it("is irregular on 6 ends, and the broken twill on 4", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 223-225; A. Wolfensberger, Theory of Silk Weaving, 1921, p. 34.
    expect(irregularSatins(6)).toEqual([
      [1, 3, 5, 2, 6, 4],
      [1, 4, 2, 6, 3, 5],
      [1, 3, 6, 4, 2, 5],
    ]);
    expect(irregularSatins(4)).toEqual([[1, 2, 4, 3]]);
    expect(irregularSatins(5)).toEqual([]);
  });

  it("is refused with what would do instead", () => {
    expectRefusal(
      () => satinOrder(6, 2),
      "bad-step",
      'no step makes a satin on 6 ends; "satin 6" is the irregular one',
    );
    expectRefusal(
      () => satinOrder(8, 2),
      "bad-step",
      "step 2 on 8 ends leaves ends unbound, for both are divisible by 2; the steps of a satin on 8 ends are 3, 5",
    );
    expectRefusal(
      () => satinOrder(8, 7),
      "bad-step",
      "step 7 on 8 ends is a twill; the steps of a satin on 8 ends are 3, 5",
    );
    expectRefusal(
      () => satinOrder(8, 11),
      "bad-step",
      "a satin on 8 ends cannot have the step 11; the steps of a satin on 8 ends are 3, 5",
    );
    expectRefusal(
      () => satinOrder(1, 1),
      "bad-step",
      'no step makes a satin on 1 end; the least is "satin 5"',
    );
    expectRefusal(
      () => satinOrder(200, 3),
      "too-large",
      "a satin on 200 ends needs 200 ground shafts; a ground harness may have 64 at the most",
    );
    expectRefusal(
      () => satinSteps(7.5),
      "bad-size",
      "the number of ends must be a whole number of at least 1, not 7.5",
    );
  });
});

/** Numbers up to n that share no divisor with it, counted by trying them. */
function totient(n: number): number {
  const shares = (a: number) =>
    Array.from({ length: n }, (_, d) => d + 1).some((d) => d > 1 && a % d === 0 && n % d === 0);
  return Array.from({ length: n }, (_, i) => i + 1).filter((a) => !shares(a)).length;
}
