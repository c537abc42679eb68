import { type LiftsOptions, parseLifts } from "./lift-notation.js";
import { parseRows } from "./row-notation.js";

/** Where in the lines of a lift plan a row is written. */
export interface LiftPlace {
  /** The line, from 1. */
  readonly line: number;
  /** The column of its first sign, from 1, in UTF-16 units. */
  readonly column: number;
  /** The column behind its last sign; the times that it is woven belong to it. */
  readonly end: number;
}

/**
 * Where in the lines of a lift plan each row is written, row 1 first. Rows alike that one line stands for have one place.
 * @param lines the lines as `parseLifts` takes them, that of row 1 (woven first) first
 * @param options how the plan is read
 * @throws {UnitsError} as `parseLifts`
 * @example liftPlaces([" 1 3", "none *2"]) // [{ line: 1, column: 2, end: 5 }, { line: 2, column: 1, end: 8 }, { line: 2, column: 1, end: 8 }]
 */
export function liftPlaces(lines: readonly string[], options: LiftsOptions = {}): readonly LiftPlace[] {
  parseLifts(lines, options);
  return lines.flatMap((text, i) => {
    const written = text.trimEnd();
    const place = { line: i + 1, column: written.search(/[^\s,]/) + 1, end: written.length + 1 };
    return new Array<LiftPlace>(parseRows(text, options).length).fill(place);
  });
}
