import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { liftPlaces, parseLifts, parseRows } from "../src/index.js";

const line = fc
  .tuple(
    fc.constantFrom("", " ", ", "),
    fc.constantFrom("none", "7", "1 3-5", "2,4"),
    fc.constantFrom("", " *2", "*3"),
    fc.constantFrom("", " "),
  )
  .map((parts) => parts.join(""));

describe("the place of a row of a lift plan", () => {
  it("is the line that it is written in, from its first sign to behind its last", () => {
    expect(liftPlaces(["  1 3 ", "none*2"])).toEqual([
      { line: 1, column: 3, end: 6 },
      { line: 2, column: 1, end: 7 },
      { line: 2, column: 1, end: 7 },
    ]);
  });

  it("holds a text that reads as that row, for every row of any plan", () => {
    fc.assert(
      fc.property(fc.array(line, { minLength: 1 }), (lines) => {
        const places = liftPlaces(lines);
        const lifts = parseLifts(lines);
        expect(places.length).toBe(lifts.length);
        places.forEach((place, row) => {
          const text = lines[place.line - 1]!.slice(place.column - 1, place.end - 1);
          expect(text).toBe(text.trim());
          expect(parseRows(text)[0]).toEqual(lifts[row]);
        });
      }),
    );
  });

  it("is refused with the plan", () => {
    expect(() => liftPlaces(["1", "q"])).toThrow("line 2, column 1");
  });
});
