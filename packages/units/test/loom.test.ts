import { rowCounts } from "@drawcord/grid";
import type { Ground, ShaftSet } from "@drawcord/ground";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  borderedThreading,
  chartOf,
  expand,
  handleOrder,
  liftCaution,
  liftWork,
  loomNeeds,
  mendThreading,
  parseLifts,
  parseThreading,
  pointThreading,
  renumberedShafts,
  threadingList,
  type UnitDraft,
} from "../src/index.js";
import { draft, shaftSet, threading } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

/** Broken twill on four ends where each treadle raises one shaft and sinks its fellow. */
const damask: Ground = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [
    { raise: [1], sink: [4] },
    { raise: [2], sink: [3] },
    { raise: [3], sink: [2] },
    { raise: [4], sink: [1] },
  ],
};

const small: UnitDraft = {
  ground: damask,
  unitEnds: 4,
  threading: [[1], []],
  lifts: [[1], []],
  picksPerRow: 4,
};

describe("what the loom must have", () => {
  it("for 11 pattern shafts, a static one and 141 units is 141 lingos, 4 shafts, 4 treadles, 4 ties (common practice)", () => {
    // Common practice: 10 shafts for the figure, 1 for the borders, and a static one in the diagram.
    const border = parseThreading("X 11*2");
    const figure = mendThreading(pointThreading(10, 3), 141 - 2 * border.length);
    const needs = loomNeeds({
      ...small,
      threading: borderedThreading(figure, border),
      lifts: parseLifts(["1-11"]),
    });
    expect(needs.units).toBe(141);
    expect(needs.lingos).toBe(141);
    expect(needs.patternShafts).toBe(11);
    expect(needs.patternShafts + (needs.staticUnits > 0 ? 1 : 0)).toBe(12);
    expect(needs.groundShafts).toBe(4);
    expect(needs.treadles).toBe(4);
    expect(needs.ties).toBe(8);
    expect(needs.tiesWithPulleys).toBe(4);
    expect(needs.ends).toBe(4 * 141);
  });

  it("counts heddles as the ends of the cloth lie on the ground shafts, and they add up", () => {
    fc.assert(
      fc.property(draft(), (d) => {
        const needs = loomNeeds(d);
        expect(needs.heddles.reduce((sum, { count }) => sum + count, 0)).toBe(needs.ends);
        // An end is raised on its shaft's own step of a ground that draws one shaft a pick.
        const steps = Array.from({ length: d.ground.shafts }, (_, i) => ({ raise: [i + 1], sink: [] }));
        const plain = { ...d, ground: { ...d.ground, steps }, lifts: [[]], picksPerRow: steps.length };
        expect(needs.heddles.map(({ count }) => count)).toEqual([...rowCounts(expand(plain).drawdown)]);
      }),
    );
  });

  it("counts leashes that add up to the units, a unit on two shafts on each of them", () => {
    fc.assert(
      fc.property(threading(), (units) => {
        const { leashes, staticUnits, lingos } = loomNeeds({ ...small, threading: units });
        const several = units.reduce((sum, unit) => sum + Math.max(0, unit.length - 1), 0);
        expect(leashes.reduce((sum, { count }) => sum + count, 0) + staticUnits).toBe(units.length + several);
        expect(lingos).toBe(units.length);
        for (const { shaft, count } of leashes) {
          expect(count).toBe(rowCounts(chartOf({ threading: units, lifts: [[shaft]] }))[0]);
        }
      }),
    );
  });

  it("draws a cord for each unit in single-unit draw, a cord for each shaft else", () => {
    const single = loomNeeds({ ...small, threading: parseThreading("1-60") });
    expect([single.singleUnitDraw, single.cords]).toEqual([true, 60]);
    const shafts = loomNeeds({ ...small, threading: parseThreading("(1-6)*10") });
    expect([shafts.singleUnitDraw, shafts.cords]).toEqual([false, 6]);
  });

  it("counts a shaft that is drawn and has no units, and no treadle for a pick of the figure alone", () => {
    const steps = [
      { raise: [1, 3], sink: [2, 4] },
      { raise: [], sink: [] },
      { raise: [2, 4], sink: [1, 3] },
      { raise: [], sink: [] },
    ];
    const needs = loomNeeds({ ...small, lifts: [[1, 7]], ground: { ...damask, steps } });
    expect([needs.patternShafts, needs.highestPatternShaft]).toEqual([2, 7]);
    expect([needs.treadles, needs.ties, needs.tiesWithPulleys]).toEqual([2, 8, undefined]);
  });

  it("has no pulleys where a shaft would have two fellows", () => {
    const satin = [2, 5, 3, 1, 4].map((up, i) => ({ raise: [up], sink: [[1, 3, 5, 4, 2][i]!] }));
    expect(
      loomNeeds({ ...small, ground: { shafts: 5, threading: [1, 2, 3, 4, 5], steps: satin } })
        .tiesWithPulleys,
    ).toBeUndefined();
  });
});

describe("units, ends and hooks in print", () => {
  it("6 ends in a mail over an 8-end satin: units step by six, the ground goes on by eight", () => {
    // J. T. Taylor, Cotton Weaving and Designing, 1909, p. 292.
    const ground: Ground = {
      shafts: 8,
      threading: [1, 2, 3, 4, 5, 6, 7, 8],
      steps: [{ raise: [], sink: [] }],
    };
    const { drawn, drawdown, unitOfEnd } = expand({
      ground,
      unitEnds: 6,
      threading: parseThreading("1-4"),
      lifts: [[1, 3]],
      picksPerRow: 1,
    });
    expect(drawdown.columns).toBe(24);
    expect([...unitOfEnd].filter((unit) => unit === 2)).toHaveLength(6);
    const { heddles } = loomNeeds({ ...small, ground, unitEnds: 6, threading: parseThreading("1-4") });
    expect(heddles.map(({ count }) => count)).toEqual([3, 3, 3, 3, 3, 3, 3, 3]);
    // Edges step by the unit: T. F. Bell, Jacquard Weaving and Designing, 1895, p. 175.
    const edges = Array.from({ length: 23 }, (_, end) => end + 1).filter(
      (end) => drawn.get(0, end) !== drawn.get(0, end - 1),
    );
    expect(edges).toEqual([6, 12, 18]);
  });

  it("60 inches at 100 ends, 3 to a mail, are 6000 ends on 2000 hooks; 5 to a mail on 400 are 2000 ends", () => {
    // T. F. Bell, Jacquard Weaving and Designing, 1895, pp. 174-177; J. T. Taylor, Cotton Weaving and
    // Designing, 1909, p. 163.
    const cloth = (units: number, unitEnds: number) =>
      loomNeeds({ ...small, unitEnds, threading: parseThreading(`1-${units}`) });
    expect(cloth(2000, 3).ends).toBe(60 * 100);
    expect(cloth(2000, 3).cords).toBe(2000);
    expect(cloth(400, 5).ends).toBe(2000);
  });
});

describe("the work of lifting", () => {
  it("weighs each lift, finds the heaviest and counts the handles", () => {
    const work = liftWork(
      {
        ...small,
        threading: parseThreading("1*3 2 1+2 X"),
        lifts: parseLifts(["1", "1 2", "2", "none"]),
        picksPerRow: [4, 4, 2, 4],
      },
      { lingoGrams: 25 },
    );
    expect(work.rows.map(({ units }) => units)).toEqual([4, 5, 2, 0]);
    expect(work.rows.map(({ grams }) => grams)).toEqual([100, 125, 50, 0]);
    expect(work.rows.map(({ picks }) => picks)).toEqual([
      [0, 3],
      [4, 7],
      [8, 9],
      [10, 13],
    ]);
    expect(work.rows[1]).toMatchObject({ pulled: [2], released: [] });
    expect(work.rows[2]).toMatchObject({ pulled: [], released: [1] });
    expect(work.heaviest.row).toBe(1);
    expect([work.pulls, work.changes, work.picks]).toEqual([2, 4, 14]);
    expect(liftWork(small).heaviest.grams).toBeUndefined();
  });

  it("draws the units that the cloth shows drawn", () => {
    fc.assert(
      fc.property(threading(8, 20), fc.array(shaftSet(8), { minLength: 1, maxLength: 6 }), (units, lifts) => {
        const work = liftWork({ ...small, threading: units, lifts });
        expect(work.rows.map((row) => row.units)).toEqual([
          ...rowCounts(chartOf({ threading: units, lifts })),
        ]);
      }),
    );
  });

  it("lets go what it pulled, but for what the last row holds", () => {
    fc.assert(
      fc.property(fc.array(shaftSet(8), { minLength: 1, maxLength: 8 }), (lifts) => {
        const { rows, pulls, changes } = liftWork({ ...small, lifts });
        expect(pulls - (changes - pulls)).toBe(lifts.at(-1)!.length);
        let held: ShaftSet = [];
        for (const { drawn, pulled, released } of rows) {
          held = [...held.filter((shaft) => !released.includes(shaft)), ...pulled].sort((a, b) => a - b);
          expect(held).toEqual(drawn);
        }
      }),
    );
  });

  it("comes with a caution that defers to the maker of the loom", () => {
    for (const grams of [undefined, 100, 6000, 35_000]) {
      expect(liftCaution(grams)).toContain("the maker of your loom");
      expect(liftCaution(grams)).toContain("qualified person");
      expect(liftCaution(grams)).toContain("Local rules");
    }
  });

  it("grows with the weight: one light, heavy from 5 kg, too much from 15 kg, and says so where it is not known", () => {
    expect(liftCaution(4999)).toBe(liftCaution(0));
    expect(liftCaution(5000)).toContain("5 kg of lingos is heavy: pull a few handles at a time");
    expect(liftCaution(35_000)).toContain("35 kg of lingos is too much to draw as it stands");
    expect(liftCaution()).toContain("What the lingos weigh is not known");
  });
});

describe("an order of shafts that lessens the grasps", () => {
  /** Groups of neighbours pulled or let go, on a picture of the handles. */
  const slowGrasps = (lifts: readonly ShaftSet[], shafts: number) => {
    let before = ".".repeat(shafts);
    let grasps = 0;
    for (const lift of lifts) {
      const after = Array.from({ length: shafts }, (_, i) => (lift.includes(i + 1) ? "#" : ".")).join("");
      const moved = [...after].map((square, i) => (square === before[i] ? " " : square)).join("");
      grasps += [...moved.matchAll(/#+|\.+/g)].length;
      before = after;
    }
    return grasps;
  };
  const permutations = (items: readonly number[]): number[][] =>
    items.length === 0
      ? [[]]
      : items.flatMap((item) =>
          permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
        );

  it("is the best of all orders", () => {
    fc.assert(
      fc.property(fc.array(shaftSet(5), { minLength: 1, maxLength: 8 }), (lifts) => {
        const found = handleOrder(lifts, 5);
        const inOrder = (order: readonly number[]) =>
          slowGrasps(renumberedShafts({ threading: [], lifts }, order).lifts, 5);
        expect(found.graspsNow).toBe(slowGrasps(lifts, 5));
        expect(found.grasps).toBe(inOrder(found.order));
        expect(found.grasps).toBe(Math.min(...permutations([1, 2, 3, 4, 5]).map(inOrder)));
        expect(found.proved).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("never takes more grasps than the shafts as they hang, and weaves the same cloth", () => {
    fc.assert(
      fc.property(
        threading(30, 30),
        fc.array(shaftSet(30), { minLength: 1, maxLength: 12 }),
        (units, lifts) => {
          const found = handleOrder(lifts, 30);
          expect(found.grasps).toBeLessThanOrEqual(found.graspsNow);
          expect(found.order.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 30 }, (_, i) => i + 1));
          const plan = renumberedShafts({ threading: units, lifts }, found.order);
          expect(chartOf(plan).equals(chartOf({ threading: units, lifts }))).toBe(true);
        },
      ),
      { numRuns: 50 },
    );
    expect(handleOrder([[]])).toEqual({ order: [], grasps: 0, graspsNow: 0, proved: true });
  });
});

describe("the threading list", () => {
  it("begins at the right, as seen from the bench, in groups to tick off", () => {
    const list = threadingList(parseThreading("X 1-9 8-1 9+10"), { group: 5 });
    expect(list[0]).toEqual({ units: [18, 17, 16, 15, 14], shafts: ["9+10", "1", "2", "3", "4"], done: 5 });
    expect(list.at(-1)).toEqual({ units: [3, 2, 1, 0], shafts: ["3", "2", "1", "X"], done: 19 });
  });

  it("names every unit once, and from the left reads as the threading does", () => {
    fc.assert(
      fc.property(threading(), fc.integer({ min: 1, max: 12 }), (units, group) => {
        const left = threadingList(units, { from: "left", group });
        expect(parseThreading(left.flatMap(({ shafts }) => shafts).join(" "))).toEqual(units);
        const right = threadingList(units, { group });
        expect(right.flatMap((part) => part.units)).toEqual(left.flatMap((part) => part.units).reverse());
        expect(right.map(({ done }) => done).at(-1)).toBe(units.length);
        expect(right.slice(0, -1).every((part) => part.units.length === group)).toBe(true);
      }),
    );
    expectRefusal(() => threadingList([[1]], { group: 0 }), "bad-size", "groups of 0 units are asked for");
  });
});
