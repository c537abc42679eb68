import { BitGrid, fromBooleans, rowCounts } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cells } from "../../grid/test/arbitraries.js";
import { squaresPath } from "../src/index.js";
import { squaresOf } from "./squares-of.js";

const grids = cells(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 70 })).map(({ cells: rows }) =>
  fromBooleans(rows),
);

describe("squares of a grid", () => {
  it("are all in the path, once each, and no others", () => {
    fc.assert(
      fc.property(grids, (grid) => {
        const squares = squaresOf(squaresPath(grid));
        const raised = rowCounts(grid).reduce((sum, one) => sum + one, 0);
        expect(squares.length).toBe(raised);
        const distinct = new Set(squares.map(([column, row]) => row * grid.columns + column));
        expect(distinct.size).toBe(raised);
        for (const [column, row] of squares) expect(grid.get(grid.rows - 1 - row, column)).toBe(true);
      }),
    );
  });

  it("a solid area is one stroke, however large", () => {
    const solid = BitGrid.own(500, 64, new Uint32Array(1000).fill(0xffff_ffff));
    expect(squaresPath(solid)).toBe("M0 0h64v500h-64z");
  });
});
