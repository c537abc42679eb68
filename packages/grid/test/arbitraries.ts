import fc from "fast-check";
import { type BitGrid, fromBooleans } from "../src/index.js";

/** The slow twin of a grid: rows of booleans, row 0 first, and its size, which rows alone do not tell when there are none. */
export interface Cells {
  readonly rows: number;
  readonly columns: number;
  readonly cells: readonly (readonly boolean[])[];
}

/** Widths where a row of 32-bit words is most likely to break, and any other. */
export const side = fc.oneof(fc.constantFrom(0, 1, 31, 32, 33, 63, 64, 65), fc.nat({ max: 130 }));

export function cells(
  rows: fc.Arbitrary<number> = side,
  columns: fc.Arbitrary<number> = side,
): fc.Arbitrary<Cells> {
  return fc
    .tuple(rows, columns)
    .chain(([r, c]) =>
      fc
        .array(fc.array(fc.boolean(), { minLength: c, maxLength: c }), { minLength: r, maxLength: r })
        .map((drawn) => ({ rows: r, columns: r === 0 ? 0 : c, cells: drawn })),
    );
}

export function gridOf(twin: Cells): BitGrid {
  return fromBooleans(twin.cells);
}
