import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shaftUses } from "../src/index.js";
import { draft } from "./arbitraries.js";

describe("the uses of the pattern shafts", () => {
  it("are the units and the rows that name each, by looking at every one", () =>
    fc.assert(
      fc.property(draft(), (one) => {
        const naming = (sets: readonly (readonly number[])[], shaft: number) =>
          sets.flatMap((set, i) => (set.includes(shaft) ? [i + 1] : []));
        const named = [...new Set([...one.threading, ...one.lifts].flat())].sort((a, b) => a - b);
        expect(shaftUses(one)).toEqual(
          named.map((shaft) => {
            const rows = naming(one.lifts, shaft);
            return {
              shaft,
              units: naming(one.threading, shaft),
              rows: rows.length,
              firstRow: rows[0] ?? 0,
              lastRow: rows.at(-1) ?? 0,
            };
          }),
        );
      }),
    ));

  it("are told of shafts of any number", () => {
    const lift = [3, 1_000_000];
    const one = {
      ground: { shafts: 1, threading: [1], steps: [{ raise: [1], sink: [] }] },
      unitEnds: 1,
      threading: [[1_000_000]],
      lifts: [[3], lift, [], lift],
      picksPerRow: 1,
    };
    expect(shaftUses(one)).toEqual([
      { shaft: 3, units: [], rows: 3, firstRow: 1, lastRow: 4 },
      { shaft: 1_000_000, units: [1], rows: 2, firstRow: 2, lastRow: 4 },
    ]);
  });
});
