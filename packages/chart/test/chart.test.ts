import {
  type BitGrid,
  fromBooleans,
  fromCells,
  fromText,
  mirror,
  rowCounts,
  toText,
  transpose,
  xor,
} from "@drawcord/grid";
import { chartOf, parseThreading, printThreading, threadingPoints } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shaftSet, threading } from "../../units/test/arbitraries.js";
import { chartCloth, nearestLifts, quarrelSentence, threadedChart, weavable } from "../src/index.js";
import { chart } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";
import { slowFewestChanges, slowNearestLifts } from "./slow-twins.js";

const columnsOf = (grid: BitGrid) => toText(transpose(grid)).split("\n").reverse();
const unlike = (grid: BitGrid) => new Set(columnsOf(grid).filter((column) => column.includes("#"))).size;
const squares = (grid: BitGrid) => rowCounts(grid).reduce((sum, count) => sum + count, 0);
const shaftsOf = (units: readonly (readonly number[])[]) => new Set(units.flat()).size;

describe("a chart threaded", () => {
  it("comes back from its threading and lifts", () => {
    fc.assert(
      fc.property(chart(20, 40), (wanted) => {
        expect(toText(chartOf(threadedChart(wanted)))).toBe(toText(wanted));
      }),
    );
  });

  it("takes as many shafts as it has columns unlike each other that draw anything", () => {
    fc.assert(
      fc.property(chart(4, 40), (wanted) => {
        const { threading: units } = threadedChart(wanted);
        expect(shaftsOf(units)).toBe(unlike(wanted));
        columnsOf(wanted).forEach((column, unit) => {
          expect(units[unit]!.length === 0).toBe(!column.includes("#"));
        });
      }),
    );
  });

  it("numbers its shafts from unit 1 on and finds the static units", () => {
    const lantern = fromText("..#..\n.###.\n.#.#.\n..#..");
    const plan = threadedChart(lantern);
    expect(printThreading(plan.threading)).toBe("X 1 2 1 X");
    expect(plan.lifts).toEqual([[2], [1], [1, 2], [2]]);
  });

  it("needs a chart", () => {
    expectRefusal(() => threadedChart(fromText("")), "empty-chart", "the chart has 0 rows and 0 units");
    expectRefusal(() => chartCloth(fromText("")), "empty-chart", "expected one of each or more");
  });
});

describe("a chart with fewer shafts than it takes", () => {
  it("is exact where the shafts suffice", () => {
    fc.assert(
      fc.property(chart(6, 20), fc.integer({ min: 0, max: 3 }), (wanted, more) => {
        fc.pre(unlike(wanted) + more > 0);
        const cloth = chartCloth(wanted, { shafts: unlike(wanted) + more });
        expect(toText(cloth.chart)).toBe(toText(wanted));
        expect([cloth.changes, cloth.atLeast]).toEqual([0, 0]);
      }),
    );
  });

  it("changes as few squares as trying every grouping does, up to 8 x 8, and says so", () => {
    fc.assert(
      fc.property(chart(8, 8), fc.integer({ min: 1, max: 5 }), (wanted, shafts) => {
        const cloth = chartCloth(wanted, { shafts });
        expect(cloth.changes).toBe(slowFewestChanges(wanted, shafts));
        expect(cloth.atLeast).toBe(cloth.changes);
        expect(shaftsOf(cloth.threading)).toBeLessThanOrEqual(shafts);
        expect(toText(chartOf(cloth))).toBe(toText(cloth.chart));
        expect(squares(xor(cloth.chart, wanted))).toBe(cloth.changes);
        expect(toText(cloth.changed)).toBe(toText(xor(cloth.chart, wanted)));
      }),
    );
  });

  it("never claims a bound above what it found, on charts too large to try whole", () => {
    fc.assert(
      fc.property(chart(40, 90, 60), fc.integer({ min: 1, max: 70 }), (wanted, shafts) => {
        const cloth = chartCloth(wanted, { shafts });
        expect(cloth.atLeast).toBeLessThanOrEqual(cloth.changes);
        expect(shaftsOf(cloth.threading)).toBeLessThanOrEqual(shafts);
      }),
      { numRuns: 10 },
    );
  });

  it("never gets nearer with fewer shafts", () => {
    fc.assert(
      fc.property(chart(8, 12), (wanted) => {
        const changes = [1, 2, 3, 4].map((shafts) => chartCloth(wanted, { shafts }).changes);
        expect(changes).toEqual(changes.toSorted((a, b) => b - a));
      }),
      { numRuns: 50 },
    );
  });

  it("finds a picture again under a few stray squares", () => {
    const petal = ["#...#...", "##.##...", ".###....", "..#....."];
    const clean = fromCells(24, 32, (row, unit) => petal[row % 4]![unit % 8] === "#");
    const stray = new Set(["2 3", "7 20", "15 11", "20 30"]);
    const wanted = xor(
      clean,
      fromCells(24, 32, (row, unit) => stray.has(`${row} ${unit}`)),
    );
    const cloth = chartCloth(wanted, { shafts: 3 });
    expect(toText(cloth.chart)).toBe(toText(clean));
    expect(cloth.changes).toBe(4);
  });
});

describe("a chart with fewer unlike lifts", () => {
  it("is the chart on its side with fewer shafts", () => {
    fc.assert(
      fc.property(chart(8, 8), fc.integer({ min: 1, max: 4 }), (wanted, lifts) => {
        const cloth = chartCloth(wanted, { lifts });
        expect(cloth.changes).toBe(slowFewestChanges(transpose(wanted), lifts));
        expect(cloth.atLeast).toBe(cloth.changes);
        expect(new Set(cloth.lifts.filter((lift) => lift.length > 0).map(String)).size).toBeLessThanOrEqual(
          lifts,
        );
      }),
    );
  });

  it("keeps to both when shafts and lifts are few", () => {
    fc.assert(
      fc.property(chart(8, 8), (wanted) => {
        const cloth = chartCloth(wanted, { shafts: 3, lifts: 2 });
        expect(unlike(cloth.chart)).toBeLessThanOrEqual(3);
        expect(unlike(transpose(cloth.chart))).toBeLessThanOrEqual(2);
        expect(cloth.atLeast).toBeLessThanOrEqual(cloth.changes);
        expect(cloth.atLeast).toBeGreaterThanOrEqual(
          Math.max(slowFewestChanges(wanted, 3), slowFewestChanges(transpose(wanted), 2)),
        );
      }),
      { numRuns: 100 },
    );
  });
});

describe("a chart made symmetric", () => {
  it("is its own mirror image, as near as any on as many shafts", () => {
    fc.assert(
      fc.property(chart(6, 8), fc.integer({ min: 1, max: 3 }), (wanted, shafts) => {
        const cloth = chartCloth(wanted, { shafts, symmetry: "mirror" });
        expect(toText(mirror(cloth.chart))).toBe(toText(cloth.chart));
        expect(shaftsOf(cloth.threading)).toBeLessThanOrEqual(shafts);
        expect(cloth.changes).toBe(slowFewestChanges(wanted, shafts, true));
        expect(cloth.atLeast).toBe(cloth.changes);
        expect(cloth.threading).toEqual(cloth.threading.toReversed());
      }),
    );
  });

  it("already mirrored, is not changed", () => {
    fc.assert(
      fc.property(chart(6, 9), (half) => {
        const whole = fromCells(half.rows, 2 * half.columns, (row, unit) =>
          half.get(row, Math.min(unit, 2 * half.columns - 1 - unit)),
        );
        expect(chartCloth(whole, { symmetry: "mirror" }).changes).toBe(0);
      }),
    );
  });

  it("in points, is threaded in points, begun where it changes fewest squares", () => {
    const tent = fromCells(4, 19, (row, unit) => row === [3, 2, 1, 0, 1, 2][(unit + 4) % 6]);
    const cloth = chartCloth(tent, { shafts: 4, symmetry: "point" });
    expect(cloth.changes).toBe(0);
    expect(threadingPoints(cloth.threading).map(({ shaft }) => shaft)).toEqual([4, 1, 4, 1, 4, 1]);
    fc.assert(
      fc.property(chart(5, 12), fc.integer({ min: 1, max: 4 }), (wanted, shafts) => {
        const found = chartCloth(wanted, { shafts, symmetry: "point" });
        const point =
          shafts < 3
            ? [1, 2].slice(0, shafts)
            : [1, 2, 3, 4].slice(0, shafts).concat([3, 2].slice(4 - shafts));
        const changes = point.map((_, first) => {
          const units = Array.from({ length: wanted.columns }, (_, unit) => [
            point[(first + unit) % point.length]!,
          ]);
          return slowNearestLifts(units, wanted);
        });
        expect(found.changes).toBe(Math.min(...changes));
      }),
    );
    expectRefusal(
      () => chartCloth(tent, { symmetry: "point" }),
      "bad-size",
      "points are asked for without a number of shafts",
    );
  });
});

describe("a threading given", () => {
  it("weaves a chart exactly when no units quarrel, with lifts that do", () => {
    fc.assert(
      fc.property(threading(5, 12), fc.array(shaftSet(5), { minLength: 1, maxLength: 6 }), (units, lifts) => {
        const wanted = chartOf({ threading: units, lifts });
        const found = weavable(units, wanted);
        expect(found.quarrels).toEqual([]);
        expect(toText(chartOf({ threading: units, lifts: found.lifts! }))).toBe(toText(wanted));
      }),
    );
  });

  it("quarrels in just the rows that no lift weaves", () => {
    fc.assert(
      fc.property(threading(4, 8), fc.infiniteStream(fc.boolean()), (units, bits) => {
        const squaresOf = [...bits.take(3 * units.length)];
        const wanted = fromBooleans(
          [0, 1, 2].map((row) => squaresOf.slice(row * units.length, (row + 1) * units.length)),
        );
        const { quarrels, lifts } = weavable(units, wanted);
        const impossible = [0, 1, 2].filter((row) => {
          const asked = fromCells(1, units.length, (_, unit) => wanted.get(row, unit));
          return slowNearestLifts(units, asked) > 0;
        });
        expect([...new Set(quarrels.map(({ row }) => row))]).toEqual(impossible);
        expect(lifts === undefined).toBe(impossible.length > 0);
        for (const { row, drawn, undrawn } of quarrels) {
          expect(drawn.every((unit) => wanted.get(row, unit))).toBe(true);
          expect(undrawn.some((unit) => wanted.get(row, unit))).toBe(false);
        }
      }),
    );
  });

  it("names the units that quarrel, the row and the shaft", () => {
    const { quarrels } = weavable(parseThreading("1 2 1 X 2+3"), fromText("##.#.\n#.#.."));
    expect(quarrels.map(quarrelSentence)).toEqual([
      "row 2: shaft 1 should be drawn for unit 1 and stay for unit 3",
      "row 2: shaft 2 should be drawn for unit 2 and stay for unit 5",
      "row 2: unit 4 should be drawn and is static",
    ]);
    expect(quarrelSentence({ row: 4, shafts: [2, 3], drawn: [0, 1, 2, 3, 4, 5, 6], undrawn: [9] })).toBe(
      "row 5: shafts 2, 3 should be drawn for units 1, 2, 3, 4, 5, 6 and 1 more and stay for unit 10",
    );
  });

  it("draws no handle that another one makes needless", () => {
    expect(weavable(parseThreading("1+2 1"), fromText("##")).lifts).toEqual([[1]]);
    expect(weavable(parseThreading("1+2 1 2"), fromText("###")).lifts).toEqual([[1, 2]]);
  });

  it("comes as near as trying every lift does", () => {
    fc.assert(
      fc.property(threading(5, 10), chart(4, 1), (units, seed) => {
        const wanted = fromCells(
          seed.rows,
          units.length,
          (row, unit) => ((row + 2) * (unit + 3) * 7 + Number(seed.get(row, 0))) % 5 < 2,
        );
        const cloth = nearestLifts(units, wanted);
        expect(cloth.changes).toBe(slowNearestLifts(units, wanted));
        expect(cloth.atLeast).toBe(cloth.changes);
      }),
    );
  });

  it("with many shafts tied together, still says what could not be better", () => {
    const units = Array.from({ length: 40 }, (_, unit) => [1 + (unit % 20), 2 + (unit % 20)]);
    const wanted = fromCells(10, 40, (row, unit) => (row * unit) % 3 === 0);
    const cloth = nearestLifts(units, wanted);
    expect(cloth.atLeast).toBeLessThanOrEqual(cloth.changes);
    expect(cloth.changes).toBeLessThan(squares(wanted));
  });

  it("needs a chart as wide as the units", () => {
    expectRefusal(
      () => weavable([[1]], fromText("##")),
      "wrong-length",
      "the chart is 2 units wide; the threading has 1 units",
    );
    expectRefusal(() => nearestLifts([[1]], fromText("##")), "wrong-length", "the chart is 2 units wide");
  });
});

describe("means that cannot be", () => {
  it("are refused", () => {
    const wanted = fromText("#.");
    expectRefusal(
      () => chartCloth(wanted, { shafts: 201 }),
      "bad-size",
      "201 pattern shafts are asked for; expected a whole number from 1 to 200",
    );
    expectRefusal(() => chartCloth(wanted, { shafts: 0 }), "bad-size", "0 pattern shafts are asked for");
    expectRefusal(() => chartCloth(wanted, { lifts: 0.5 }), "bad-size", "0.5 unlike lifts are asked for");
  });
});
