import { BitGrid, toBooleans } from "@drawcord/grid";
import fc from "fast-check";
import { expect, it } from "vitest";
import { groupRows } from "../../src/draft/group-rows.js";
import { grids } from "../arbitraries.js";

it("rows are told apart as their squares are", () => {
  fc.assert(
    fc.property(grids(), (grid) => {
      const rows = toBooleans(grid).map((row) => row.join());
      const different = [...new Set(rows)];
      const { group, first } = groupRows(grid);
      expect(group).toEqual(rows.map((row) => different.indexOf(row)));
      expect(first).toEqual(different.map((row) => rows.indexOf(row)));
    }),
  );
});

it("rows of one hash are told apart", () => {
  // Both rows hash to 0: 0 and 0, and 1 followed by the prime that the hash multiplies with.
  expect(groupRows(BitGrid.fromWords(2, 64, [0, 0, 1, 0x01000193])).group).toEqual([0, 1]);
});
