import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseLifts, parseRows, parseShafts, printLifts, printShafts } from "../src/index.js";
import { shaftSet } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

describe("the row notation", () => {
  it("reads the shafts drawn, in any order, and none", () => {
    expect(parseShafts("1 3-5 9")).toEqual([1, 3, 4, 5, 9]);
    expect(parseShafts("9, 5-3, 1")).toEqual([1, 3, 4, 5, 9]);
    expect(parseShafts("none")).toEqual([]);
    expect(parseShafts("4")).toEqual([4]);
  });

  it("reads rows alike", () => {
    expect(parseRows("1 2 *3")).toEqual([
      [1, 2],
      [1, 2],
      [1, 2],
    ]);
    expect(parseRows("none *2")).toEqual([[], []]);
    expect(parseRows("7")).toEqual([[7]]);
  });

  it("reads a plan line by line, row 1 first", () => {
    expect(parseLifts(["9", "1 3-5 9", "none *2"])).toEqual([[9], [1, 3, 4, 5, 9], [], []]);
  });

  it("folds runs of three shafts or more when it prints", () => {
    expect(printShafts([1, 2, 4, 5, 6])).toBe("1 2 4-6");
    expect(printShafts([])).toBe("none");
    expect(printLifts([[1], [1], [1], [], [2, 3, 4]])).toEqual(["1 *3", "none", "2-4"]);
  });

  it("is read back as it was printed, a row and a whole plan", () => {
    fc.assert(
      fc.property(shaftSet(40), (shafts) => {
        expect(parseShafts(printShafts(shafts))).toEqual(shafts);
      }),
    );
    fc.assert(
      fc.property(fc.array(shaftSet(3), { minLength: 1 }), (lifts) => {
        expect(parseLifts(printLifts(lifts))).toEqual(lifts);
      }),
    );
  });
});

describe("a row that cannot be read", () => {
  const refuse = (
    text: string,
    code: Parameters<typeof expectRefusal>[1],
    sentence: string,
    column: number,
  ) => expectRefusal(() => parseRows(text), code, sentence, { column });

  it("has a column for every fault", () => {
    refuse("1 0 3", "bad-shaft", "column 3: shaft 0 was found", 3);
    refuse("1-5 4", "repeated-shaft", "shaft 4 is named twice", 5);
    refuse("none 3", "bad-run", `"none" and "3" stand together`, 6);
    refuse("3 none", "bad-run", `"none" was found; expected a shaft number`, 3);
    refuse("1 2 *0", "bad-repeat", `"0" was found after "*"`, 6);
    refuse("1 *2 3", "bad-repeat", `"3" was found after the number of rows`, 6);
    refuse("", "unnamed-shafts", `no shafts are named; expected their numbers, or "none"`, 1);
    refuse("*3", "unnamed-shafts", "no shafts are named", 1);
    refuse("1+2", "bad-run", `"+" was found; expected a shaft number`, 2);
    refuse("(1)", "bad-run", `"(" was found; expected a shaft number`, 1);
    refuse("1 *99999999", "too-large", "99999999 rows alike are more than the 1000000 that are read", 3);
  });

  it("has no number of times where a single set is asked for", () => {
    expectRefusal(() => parseShafts("1 *2"), "bad-repeat", "one set of shafts has no number of times", {
      column: 3,
    });
  });

  it("is placed by line and column in a plan", () => {
    expectRefusal(() => parseLifts(["1", "2 x"]), "bad-run", "line 2, column 3", { line: 2, column: 3 });
    expectRefusal(() => parseLifts([]), "no-rows", "the lift plan has no rows");
  });

  it("is refused when the plan names or holds too much", () => {
    expectRefusal(() => parseLifts(["1 *6", "2 *5"], { mostRows: 10 }), "too-large", "more than 10 rows", {
      line: 2,
    });
    expectRefusal(() => parseLifts(["1-6", "2-6"], { mostShafts: 10 }), "too-large", "more than 10 shafts", {
      line: 2,
    });
    expect(parseLifts(["1-6", "1-6", "1-6"], { mostShafts: 10 })).toHaveLength(3);
  });
});
