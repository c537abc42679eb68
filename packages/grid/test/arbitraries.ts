import fc from "fast-check";
import { type BitGrid, fromBooleans } from "../src/index.js";

/** The slow twin of a grid: rows of booleans, row 0 first, and its size, which rows alone do not tell when there are none. */
export interface Cells {
  readonly rows: number;
  readonly columns: number;
  readonly cells: readonly (readonly boolean[])[];
}

/** Widths where a row of 32-bit words is most likely to break, and any other. */
export const side = fc.oneof(fc.constantFrom(0, 1, 31, 32, 33, 63, 64, 65), fc.nat({ max: 70 }));

/** Cells are drawn 32 at a time, as one whole number: that is many times quicker than cell by cell. */
export function cells(
  rows: fc.Arbitrary<number> = side,
  columns: fc.Arbitrary<number> = side,
): fc.Arbitrary<Cells> {
  return fc.tuple(rows, columns).chain(([r, c]) => {
    const words = Math.ceil(c / 32);
    const drawn = fc.array(fc.integer(), { minLength: r * words, maxLength: r * words });
    return drawn.map((bits) => ({
      rows: r,
      columns: r === 0 ? 0 : c,
      cells: Array.from({ length: r }, (_, row) =>
        Array.from(
          { length: c },
          (_, column) => ((bits[row * words + (column >> 5)]! >> (column % 32)) & 1) === 1,
        ),
      ),
    }));
  });
}

export function gridOf(twin: Cells): BitGrid {
  return fromBooleans(twin.cells);
}
