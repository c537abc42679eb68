import { and, fromCells, fromText, rowCounts, toText, transpose } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ChartError, chartCloth } from "../src/index.js";
import { chart } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";
import { slowFewestChanges } from "./slow-twins.js";

const unlike = (grid: ReturnType<typeof fromText>) =>
  new Set(
    toText(transpose(grid))
      .split("\n")
      .filter((column) => column.includes("#")),
  ).size;
const squares = (grid: ReturnType<typeof fromText>) => rowCounts(grid).reduce((sum, count) => sum + count, 0);

describe("squares that may not change", () => {
  const masked = chart(8, 9).chain((wanted) =>
    fc
      .array(fc.boolean(), {
        minLength: wanted.rows * wanted.columns,
        maxLength: wanted.rows * wanted.columns,
      })
      .map((cells) => ({
        wanted,
        fixed: fromCells(
          wanted.rows,
          wanted.columns,
          (row, unit) => cells[row * wanted.columns + unit]! && (row + unit) % 3 === 0,
        ),
      })),
  );

  it("stay, on no more shafts and lifts than are asked for, or the chart is refused", () => {
    let refused = 0;
    let woven = 0;
    fc.assert(
      fc.property(
        masked,
        fc.integer({ min: 1, max: 6 }),
        fc.option(fc.integer({ min: 1, max: 6 }), { nil: undefined }),
        ({ wanted, fixed }, shafts, lifts) => {
          try {
            const cloth = chartCloth(wanted, { shafts, fixed, ...(lifts !== undefined && { lifts }) });
            woven++;
            expect(squares(and(cloth.changed, fixed))).toBe(0);
            expect(unlike(cloth.chart)).toBeLessThanOrEqual(shafts);
            if (lifts !== undefined) expect(unlike(transpose(cloth.chart))).toBeLessThanOrEqual(lifts);
            expect(cloth.changes).toBe(squares(cloth.changed));
            expect(cloth.changes).toBeGreaterThanOrEqual(cloth.atLeast);
          } catch (error) {
            expect((error as ChartError).code).toBe("fixed-squares");
            refused++;
          }
        },
      ),
    );
    expect(woven).toBeGreaterThan(20);
    expect(refused).toBeGreaterThan(0);
  });

  it("where there are none, cost little more than the nearest picture there is", () => {
    let ours = 0;
    let best = 0;
    fc.assert(
      fc.property(chart(7, 7), fc.integer({ min: 1, max: 3 }), (wanted, shafts) => {
        const none = fromCells(wanted.rows, wanted.columns, () => false);
        const { changes } = chartCloth(wanted, { shafts, fixed: none });
        const fewest = slowFewestChanges(wanted, shafts);
        expect(changes).toBeGreaterThanOrEqual(fewest);
        ours += changes;
        best += fewest;
      }),
      { numRuns: 60 },
    );
    expect(ours).toBeLessThanOrEqual(best * 1.1);
  });

  it("that are all squares leave the chart as it is, or refuse fewer shafts than it takes", () => {
    const wanted = fromText("#..\n##.\n###");
    const all = fromText("###\n###\n###");
    expect(chartCloth(wanted, { shafts: 3, fixed: all }).changes).toBe(0);
    expectRefusal(
      () => chartCloth(wanted, { shafts: 2, fixed: all }),
      "fixed-squares",
      "take 3 columns unlike each other; 2 are asked for",
    );
    expectRefusal(
      () => chartCloth(wanted, { fixed: fromText("#") }),
      "wrong-length",
      "given for 1 rows and 1 units",
    );
    expectRefusal(
      () => chartCloth(wanted, { shafts: 2, fixed: all, symmetry: "mirror" }),
      "bad-size",
      "without a symmetry",
    );
  });
});
