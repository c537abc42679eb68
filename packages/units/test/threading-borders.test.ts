import { describe, expect, it } from "vitest";
import { bordersOf, parseThreading } from "../src/index.js";

describe("the borders of a threading", () => {
  it("are its outer units on shafts of their own", () => {
    expect(bordersOf(parseThreading("X*2 9 (1-8 7-2)*4 1 9 X*2"))).toEqual({
      left: 3,
      right: 3,
      shafts: [9],
    });
    expect(bordersOf(parseThreading("1-40"))).toEqual({ left: 0, right: 0, shafts: [] });
    expect(bordersOf(parseThreading("X*9"))).toEqual({ left: 0, right: 0, shafts: [] });
  });
});
