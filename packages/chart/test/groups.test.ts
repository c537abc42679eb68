import { transpose } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastChanges } from "../src/group-bound.js";
import { mergedGroups } from "../src/group-merge.js";
import { pairedItems } from "../src/group-pairs.js";
import { changesOf, itemsOf, STILL } from "../src/groups.js";
import { chart } from "./arbitraries.js";
import { slowFewestChanges } from "./slow-twins.js";

/** Every column of a chart as an item of its own. */
const items = (mostRows: number, mostUnits: number) =>
  chart(mostRows, mostUnits, 12).map((grid) => {
    const columns = transpose(grid);
    const drawn = Array.from({ length: columns.rows }, (_, unit) =>
      Array.from({ length: columns.columns }, (_, row) => Number(columns.get(unit, row))),
    );
    return {
      grid,
      items: itemsOf(
        grid.rows,
        drawn,
        drawn.map(() => 1),
      ),
    };
  });
const groups = fc.integer({ min: 1, max: 4 });

describe("what no grouping of columns can beat", () => {
  it("is never more than the best grouping changes", () => {
    fc.assert(
      fc.property(items(9, 8), groups, ({ grid, items: columns }, most) => {
        const bound = leastChanges(columns, pairedItems(columns), most);
        expect(bound).toBeLessThanOrEqual(slowFewestChanges(grid, most));
      }),
    );
  });

  it("is just what the best grouping changes where there is one group too few, or none", () => {
    fc.assert(
      fc.property(items(9, 6), ({ grid, items: columns }) => {
        const pairs = pairedItems(columns);
        expect(leastChanges(columns, pairs, 0)).toBe(slowFewestChanges(grid, 0));
        fc.pre(columns.count > 1);
        const most = columns.count - 1;
        expect(leastChanges(columns, pairs, most)).toBe(slowFewestChanges(grid, most));
      }),
    );
  });
});

describe("the bound by hand", () => {
  it("is three quarters of two ties for three columns apart on one shaft", () => {
    // Each draws two squares of its own: tied to the still group by 2, to each other by 4. The best changes 4.
    const drawn = [0, 2, 4].map((first) =>
      Array.from({ length: 6 }, (_, row) => Number(row >= first && row < first + 2)),
    );
    const columns = itemsOf(6, drawn, [1, 1, 1]);
    expect(leastChanges(columns, pairedItems(columns), 1)).toBe((3 / 4) * (2 + 2));
  });
});

describe("a grouping found quickly", () => {
  it("cannot be bettered by moving one column", () => {
    fc.assert(
      fc.property(items(12, 30), groups, ({ items: columns }, most) => {
        const found = mergedGroups(columns, pairedItems(columns), most);
        const changes = changesOf(columns, found);
        for (let item = 0; item < columns.count; item++) {
          for (let group = STILL; group < most; group++) {
            const moved = found.slice();
            moved[item] = group;
            expect(changesOf(columns, moved)).toBeGreaterThanOrEqual(changes);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
