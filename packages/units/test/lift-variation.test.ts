import { crop, fromText, mirror, toText, transpose, turn, upsideDown } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  alternatingLifts,
  brickLifts,
  exchangedLifts,
  fittedLifts,
  framedLifts,
  gridFromLifts,
  halfDropLifts,
  liftsFromGrid,
  mirroredLifts,
  repeatedLifts,
  turnedLifts,
  upsideDownLifts,
} from "../src/index.js";
import { shaftSet } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";

const SHAFTS = 8;
const ALL: ShaftSet = [1, 2, 3, 4, 5, 6, 7, 8];

const lifts = (rows = fc.integer({ min: 1, max: 9 })) =>
  rows.chain((n) => fc.array(shaftSet(SHAFTS), { minLength: n, maxLength: n }));
const evenRows = fc.integer({ min: 1, max: 5 }).map((half) => 2 * half);

/** The shafts of a plan that are among `on`. */
const only = (plan: readonly ShaftSet[], on: ShaftSet) =>
  plan.map((row) => row.filter((shaft) => on.includes(shaft)));

describe("a lift plan varied", () => {
  it("twice upside down, mirrored, turned or exchanged is the plan again", () => {
    fc.assert(
      fc.property(lifts(), shaftSet(SHAFTS), (plan, on) => {
        expect(upsideDownLifts(upsideDownLifts(plan))).toEqual(plan);
        expect(mirroredLifts(mirroredLifts(plan, on), on)).toEqual(plan);
        expect(turnedLifts(turnedLifts(plan, on), on)).toEqual(plan);
        expect(exchangedLifts(exchangedLifts(plan, on), on)).toEqual(plan);
      }),
    );
  });

  it("looks as its picture mirrored, upside down or turned does", () => {
    fc.assert(
      fc.property(lifts(), (plan) => {
        const picture = gridFromLifts(plan, SHAFTS);
        expect(mirroredLifts(plan, ALL)).toEqual(liftsFromGrid(mirror(picture)));
        expect(upsideDownLifts(plan)).toEqual(liftsFromGrid(upsideDown(picture)));
        expect(turnedLifts(plan, ALL)).toEqual(liftsFromGrid(mirror(upsideDown(picture))));
      }),
    );
  });

  it("leaves the shafts alone that are not named", () => {
    fc.assert(
      fc.property(lifts(), shaftSet(SHAFTS), (plan, on) => {
        const others = ALL.filter((shaft) => !on.includes(shaft));
        expect(only(mirroredLifts(plan, on), others)).toEqual(only(plan, others));
        expect(only(exchangedLifts(plan, on), others)).toEqual(only(plan, others));
      }),
    );
  });

  it("exchanged, draws on the named shafts just what was not drawn", () => {
    fc.assert(
      fc.property(lifts(), shaftSet(SHAFTS), (plan, on) => {
        exchangedLifts(plan, on).forEach((row, i) => {
          for (const shaft of on) expect(row.includes(shaft)).toBe(!plan[i]!.includes(shaft));
        });
      }),
    );
  });

  it("repeated, is itself in every repeat; alternating, changed in every other", () => {
    fc.assert(
      fc.property(lifts(), fc.integer({ min: 1, max: 5 }), (plan, times) => {
        const again = repeatedLifts(plan, times);
        const turned = alternatingLifts(plan, times, (rows) => turnedLifts(rows, ALL));
        for (let i = 0; i < times; i++) {
          const part = (rows: readonly ShaftSet[]) => rows.slice(i * plan.length, (i + 1) * plan.length);
          expect(part(again)).toEqual(plan);
          expect(part(turned)).toEqual(i % 2 === 0 ? plan : turnedLifts(plan, ALL));
        }
        expect(again).toHaveLength(times * plan.length);
        expect(turned).toHaveLength(times * plan.length);
      }),
    );
  });

  it("half-dropped, comes again beside, half its rows later, and twice dropped is back", () => {
    fc.assert(
      fc.property(lifts(evenRows), (plan) => {
        const dropped = gridFromLifts(halfDropLifts(plan, [1, 2, 3, 4], [5, 6, 7, 8]), SHAFTS);
        const half = plan.length / 2;
        const back = halfDropLifts(
          halfDropLifts(plan, [1, 2, 3, 4], [5, 6, 7, 8]),
          [5, 6, 7, 8],
          [1, 2, 3, 4],
        );
        expect(only(back, [1, 2, 3, 4])).toEqual(only(plan, [1, 2, 3, 4]));
        for (let row = 0; row < plan.length; row++) {
          for (let column = 0; column < 4; column++) {
            expect(dropped.get(row, column)).toBe(plan[row]!.includes(column + 1));
            expect(dropped.get(row, column + 4)).toBe(dropped.get((row + half) % plan.length, column));
          }
        }
      }),
    );
  });

  it("bricked, is the half drop with rows and shafts exchanged", () => {
    fc.assert(
      fc.property(lifts(fc.constant(4)), (plan) => {
        const motif = only(plan, ALL);
        const bricked = gridFromLifts(brickLifts(motif, ALL), SHAFTS);
        const across = liftsFromGrid(transpose(gridFromLifts(motif, SHAFTS)));
        const dropped = halfDropLifts(across, [1, 2, 3, 4], [5, 6, 7, 8]);
        expect(toText(transpose(bricked))).toBe(toText(gridFromLifts(dropped, SHAFTS)));
      }),
    );
  });

  it("framed, has the motif within, the border before, after and beside it", () => {
    fc.assert(
      fc.property(lifts(), fc.nat({ max: 4 }), (plan, rows) => {
        const framed = framedLifts(plan, { rows, across: [1, 2, 3, 9], edge: [9] });
        expect(framed).toHaveLength(plan.length + 2 * rows);
        expect(only(framed.slice(rows, rows + plan.length), ALL)).toEqual(plan);
        expect(framed.slice(rows, rows + plan.length).every((row) => row.includes(9))).toBe(true);
        for (const row of [...framed.slice(0, rows), ...framed.slice(rows + plan.length)])
          expect(row).toEqual([1, 2, 3, 9]);
      }),
    );
  });

  it("fitted, fills the length with whole repeats and less than one is left", () => {
    fc.assert(
      fc.property(lifts(), fc.nat({ max: 60 }), (plan, more) => {
        const rows = plan.length + more;
        const fitted = fittedLifts(plan, rows);
        expect(fitted.length % plan.length).toBe(0);
        expect(rows - fitted.length).toBeGreaterThanOrEqual(0);
        expect(rows - fitted.length).toBeLessThan(plan.length);
      }),
    );
  });
});

describe("a motif that a weaver would turn", () => {
  const fern = liftsFromGrid(fromText("..##\n.##.\n##..\n#..."));

  it("turns by half a turn", () => {
    expect(toText(gridFromLifts(turnedLifts(fern, [1, 2, 3, 4]), 4))).toBe("...#\n..##\n.##.\n##..");
    const quarter = turn(turn(gridFromLifts(fern, 4)));
    expect(toText(quarter)).toBe(toText(gridFromLifts(turnedLifts(fern, [1, 2, 3, 4]), 4)));
  });

  it("drops by half beside itself", () => {
    expect(toText(gridFromLifts(halfDropLifts(fern, [1, 2, 3, 4], [5, 6, 7, 8])))).toBe(
      "..####..\n.##.#...\n##....##\n#....##.",
    );
  });

  it("stands brick by brick", () => {
    const bricked = gridFromLifts(brickLifts(fern, [1, 2, 3, 4]), 4);
    expect(toText(crop(bricked, { row: 4, column: 0, rows: 4, columns: 4 }))).toBe("##..\n#..#\n..##\n..#.");
  });
});

describe("a variation that cannot be", () => {
  it("is refused with what was found", () => {
    expectRefusal(() => repeatedLifts([[1]], 0), "bad-size", "repeats were given as 0");
    expectRefusal(
      () => repeatedLifts([[1], [2]], 600_000),
      "too-large",
      "comes to 1200000 rows; the most is 1000000",
    );
    expectRefusal(() => alternatingLifts([[1]], 2_000_000, upsideDownLifts), "too-large", "2000000 rows");
    expectRefusal(() => halfDropLifts([[1]], [1], [2]), "bad-size", "1 rows cannot be moved by half");
    expectRefusal(() => halfDropLifts([[1], []], [1, 2], [3]), "wrong-length", "puts 2 shafts beside 1");
    expectRefusal(() => halfDropLifts([[1], []], [1, 2], [2, 3]), "wrong-length", "expected as many others");
    expectRefusal(() => brickLifts([[1]], [1, 2, 3]), "bad-size", "3 shafts cannot be moved by half");
    expectRefusal(
      () => framedLifts([[1]], { rows: -1, across: [1] }),
      "bad-size",
      "rows of the border were given as -1",
    );
    expectRefusal(
      () => fittedLifts([[1], [2], [3]], 2),
      "bad-size",
      "a repeat of 3 rows does not fit into 2 rows",
    );
    expectRefusal(() => fittedLifts([], 2), "bad-size", "a repeat of 0 rows does not fit");
  });
});
