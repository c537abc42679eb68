import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseThreading, threadingParts, threadingShape } from "../src/index.js";

describe("the parts of a threading", () => {
  it("are named unit by unit, borders and repeats", () => {
    expect(threadingParts(parseThreading("X 9 (1-3 2)*3 1 9 X"))).toEqual([
      ...Array(2).fill("left border"),
      ...Array(4).fill("repeat 1"),
      ...Array(4).fill("repeat 2"),
      ...Array(4).fill("repeat 3"),
      "close",
      ...Array(2).fill("right border"),
    ]);
  });

  it("make up the whole, each as large as the threading taken apart has it", () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom([], [1], [2], [3], [9]), { minLength: 1, maxLength: 40 }),
        (units) => {
          const parts = threadingParts(units);
          const shape = threadingShape(units);
          const count = (start: string) => parts.filter((part) => part.startsWith(start)).length;
          expect(parts).toHaveLength(units.length);
          expect(count("left border")).toBe(shape.left.length);
          expect(count("beginning")).toBe(shape.start.length);
          expect(count("close")).toBe(shape.end.length);
          expect(count("right border")).toBe(shape.right.length);
        },
      ),
    ));
});
