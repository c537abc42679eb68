import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  borderedThreading,
  brokenThreading,
  describeThreading,
  mendThreading,
  mirroredThreading,
  parseThreading,
  pointThreading,
  printThreading,
  repeatedThreading,
  singleUnitThreading,
  staticThreading,
  straightThreading,
  threadingAlsoOn,
  threadingPoints,
  threadingShape,
} from "../src/index.js";
import { threading } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";
import { slowShortest } from "./slow-twins.js";

const shafts = fc.integer({ min: 1, max: 20 });
const times = fc.integer({ min: 1, max: 6 });

describe("the orders of threading", () => {
  it("straight goes up and begins again", () => {
    expect(printThreading(straightThreading(4, 2))).toBe("(1-4)*2");
  });

  it("repeated points turn on the last shaft and on the first, each once", () => {
    expect(pointThreading(4, 2, true).flat()).toEqual([1, 2, 3, 4, 3, 2, 1, 2, 3, 4, 3, 2, 1]);
    expect(pointThreading(2).flat()).toEqual([1, 2]);
    expect(pointThreading(1, 2).flat()).toEqual([1, 1]);
  });

  it("a broken order turns without a point", () => {
    expect(brokenThreading(4).flat()).toEqual([1, 2, 4, 3]);
    fc.assert(fc.property(shafts, (n) => threadingPoints(brokenThreading(n)).length === 0));
  });

  it("a closed point order and a mirrored one are alike from both sides", () => {
    fc.assert(
      fc.property(shafts, times, threading(), fc.boolean(), (n, repeats, order, twice) => {
        const point = pointThreading(n, repeats, true);
        expect(point).toEqual(point.toReversed());
        const mirrored = mirroredThreading(order, twice);
        expect(mirrored).toEqual(mirrored.toReversed());
        expect(mirrored).toHaveLength(2 * order.length - (twice ? 0 : 1));
      }),
    );
  });

  it("borders sit on either side, the right one mirrored", () => {
    expect(printThreading(borderedThreading(straightThreading(3), parseThreading("X*2 9")))).toBe(
      "X*2 9 1-3 9 X*2",
    );
    expect(printThreading(borderedThreading(straightThreading(3), staticThreading(1), []))).toBe("X 1-3");
  });

  it("units hang on more shafts besides their own", () => {
    expect(printThreading(threadingAlsoOn(straightThreading(3), [[9], [], [1, 3]]))).toBe("1+9 2 1+3");
    expectRefusal(() => threadingAlsoOn([[1]], []), "wrong-length", "shafts are added to 0 units");
  });

  it("single-unit draw has a cord a unit", () => {
    expect(singleUnitThreading(5).flat()).toEqual([1, 2, 3, 4, 5]);
  });

  it("are refused without shafts or repeats", () => {
    expectRefusal(
      () => straightThreading(0),
      "bad-size",
      "shafts were given as 0; expected a whole number from 1",
    );
    expectRefusal(() => pointThreading(3, 1.5), "bad-size", "repeats were given as 1.5");
    expectRefusal(() => repeatedThreading([[1]], 0), "bad-size", "repeats were given as 0");
    expectRefusal(() => staticThreading(-1), "bad-size", "static units were given as -1");
  });
});

describe("the shortest notation", () => {
  it("folds runs, points, repeats and repeats within repeats", () => {
    const shortest = (text: string) => printThreading(parseThreading(text));
    expect(shortest("1 2 3 4 5 6 7 8 7 6 5 4 3 2 1 2 3 4 5 6 7 8 7 6 5 4 3 2")).toBe("(1-8 7-2)*2");
    expect(shortest("X X 9 (1-8 7-2)*4 1 9 X X")).toBe("X*2 9 (1-8 7-2)*4 1 9 X*2");
    expect(shortest("(1*3 2*3)*2 (1*3 2*3)*2")).toBe("(1*3 2*3)*4");
    expect(shortest("((1-3)*5 X*2)*6")).toBe("((1-3)*5 X*2)*6");
    expect(shortest("1 2 1 2")).toBe("(1 2)*2");
    expect(shortest("1 2 2 1")).toBe("1 2*2 1");
    expect(shortest("12 14 12 14")).toBe("(12 14)*2");
  });

  it("is as short as the slow search over all texts finds, and reads back", () => {
    fc.assert(
      fc.property(threading(12, 26), (units) => {
        const text = printThreading(units);
        expect(text).toHaveLength(slowShortest(units));
        expect(parseThreading(text)).toEqual(units);
      }),
    );
  });

  it("reads back past the length that is searched whole", () => {
    for (const text of ["1-40 39-1 (2-40 39-1)*60", "1-2500", "X*2200 1-3", "((1-7)*3 9 X*4)*90"]) {
      expect(printThreading(parseThreading(text))).toBe(text);
    }
    const unruly = parseThreading(Array.from({ length: 3000 }, (_, i) => 1 + ((i * i) % 97)).join(" "));
    expect(parseThreading(printThreading(unruly))).toEqual(unruly);
  });
});

describe("a threading taken apart", () => {
  it("has borders, repeats and what closes them", () => {
    const shape = threadingShape(parseThreading("X*2 9 (1-8 7-2)*4 1 9 X*2"));
    expect(printThreading(shape.left)).toBe("X*2 9");
    expect(printThreading(shape.repeat)).toBe("1-8 7-2");
    expect(shape.times).toBe(4);
    expect(printThreading(shape.end)).toBe("1");
    expect(printThreading(shape.right)).toBe("9 X*2");
  });

  it("is whole again when put together", () => {
    fc.assert(
      fc.property(threading(), (units) => {
        const { left, start, repeat, times, end, right } = threadingShape(units);
        const middle = Array.from({ length: times }, () => repeat).flat();
        expect([...left, ...start, ...middle, ...end, ...right]).toEqual(units);
      }),
    );
  });
});

describe("a threading mended to a number of units", () => {
  it("comes to 141 units in repeated points on 10 shafts, with a few more on either side (common practice)", () => {
    const mended = mendThreading(pointThreading(10, 3), 141);
    expect(mended).toHaveLength(141);
    expect(printThreading(mended)).toBe("8-2 (1-10 9-2)*7 1-8");
    expect(mended).toEqual(mended.toReversed());
  });

  it("keeps its borders", () => {
    expect(printThreading(mendThreading(parseThreading("X 9 (1-4 3 2)*3 1 9 X"), 20))).toBe(
      printThreading(parseThreading("X 9 3 2 (1-4 3 2)*2 1 2 9 X")),
    );
  });

  it("has the units wanted, and inside its borders goes on by the repeat", () => {
    fc.assert(
      fc.property(threading(), fc.nat({ max: 60 }), (units, more) => {
        const { left, repeat, right } = threadingShape(units);
        const wanted = left.length + repeat.length + right.length + more;
        const mended = mendThreading(units, wanted);
        expect(mended).toHaveLength(wanted);
        const core = mended.slice(left.length, wanted - right.length);
        core.forEach((unit, i) => {
          if (i >= repeat.length) expect(unit).toEqual(core[i - repeat.length]);
        });
        expect(mended.slice(0, left.length)).toEqual(left);
        expect(mended.slice(wanted - right.length)).toEqual(right);
      }),
    );
  });

  it("is refused where borders and one repeat have no room", () => {
    expectRefusal(
      () => mendThreading(parseThreading("X (1-4)*3 X"), 5),
      "bad-size",
      "5 units are wanted; borders of 1 and 1 units and one repeat of 4 take 6",
    );
  });
});

describe("a threading in words", () => {
  it("tells the runner's", () => {
    expect(describeThreading(parseThreading("X*2 9 (1-8 7-2)*4 1 9 X*2"))).toBe(
      "63 units on 9 pattern shafts, 4 of them static. Left border of 3 units: X*2 9. " +
        "Then 4 repeats of 14 units: 1-8 7-2 and 1 unit to close: 1. " +
        "Right border of 3 units, the left one mirrored: 9 X*2. " +
        "Points on shaft 8 at units 11, 25, 39 and 53; on shaft 1 at units 18, 32 and 46.",
    );
  });

  it("tells any threading by its size, and each point by its unit", () => {
    expect(printThreading([])).toBe("");
    expect(describeThreading(parseThreading("1-3 2 1 X*2"))).toContain("Right border of 2 units: X*2.");
    fc.assert(
      fc.property(threading(), (units) => {
        const words = describeThreading(units);
        expect(words).toMatch(
          new RegExp(`^${units.length} units? on ${new Set(units.flat()).size} pattern shafts?[.,]`),
        );
        expect(/[Pp]oints? on shaft/.test(words)).toBe(threadingPoints(units).length > 0);
      }),
    );
  });

  it("tells a straight one, a mended one and one that never repeats", () => {
    expect(describeThreading(parseThreading("(1-4)*3"))).toBe(
      "12 units on 4 pattern shafts. The order is 3 repeats of 4 units: 1-4.",
    );
    expect(describeThreading(mendThreading(pointThreading(10, 2), 87))).toContain(
      "7 units to begin: 8-2; then 4 repeats of 18 units: 1-10 9-2 and 8 units to close: 1-8.",
    );
    expect(describeThreading(parseThreading("3 1+2 7"))).toBe(
      "3 units on 4 pattern shafts, 1 on more than one shaft. The order is 3 1+2 7.",
    );
    expect(describeThreading(parseThreading("X*3"))).toBe(
      "3 units on 0 pattern shafts, 3 of them static. The order is X*3.",
    );
  });
});
