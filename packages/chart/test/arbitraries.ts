import { type BitGrid, fromCells } from "@drawcord/grid";
import fc from "fast-check";

/**
 * Charts of up to so many rows and units, their columns drawn from few enough patterns that some are alike, with stray
 * squares; now and then all noise.
 */
export const chart = (mostRows: number, mostUnits: number, mostPatterns = 6): fc.Arbitrary<BitGrid> =>
  fc
    .record({
      rows: fc.integer({ min: 1, max: mostRows }),
      units: fc.integer({ min: 1, max: mostUnits }),
      patterns: fc.integer({ min: 1, max: mostPatterns }),
      stray: fc.constantFrom(0, 5, 20, 50),
    })
    .chain(({ rows, units, patterns, stray }) =>
      fc
        .tuple(
          fc.array(fc.array(fc.boolean(), { minLength: rows, maxLength: rows }), {
            minLength: patterns,
            maxLength: patterns,
          }),
          fc.array(fc.nat({ max: patterns - 1 }), { minLength: units, maxLength: units }),
          fc.array(fc.nat({ max: 99 }), { minLength: rows * units, maxLength: rows * units }),
        )
        .map(([columns, order, noise]) =>
          fromCells(
            rows,
            units,
            (row, unit) => columns[order[unit]!]![row]! !== noise[row * units + unit]! < stray,
          ),
        ),
    );
