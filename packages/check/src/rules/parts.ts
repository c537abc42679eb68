/** Where in a recipe a finding can be mended. */
import type { Where } from "../report.js";

/**
 * A row of the lift plan or a unit of the threading, by its number; or the keys and list places (from 0) to a value, in the
 * recipe or in the section of the piece.
 */
export type RecipePart =
  | {
      /** The row, from 1. */
      readonly row: number;
    }
  | {
      /** The unit, from 1. */
      readonly unit: number;
    }
  | {
      /** Keys and list places, from 0, in the section of the piece. */
      readonly piece: readonly (string | number)[];
    }
  | readonly (string | number)[];

/** The ground weave, or the steps it is given in. */
export const GROUND: readonly RecipePart[] = [["ground", "weave"], ["ground", "steps"], ["ground"]];

/** The unit threading. */
const THREADING: readonly RecipePart[] = [["units", "threading"], ["units"]];

/** The row that a finding begins at, else the lift plan. */
export function atRow({ rows }: Where): readonly RecipePart[] {
  return rows === undefined ? [["lifts"]] : [{ row: rows[0] }, ["lifts"]];
}

/** The unit that a finding begins at, else the threading. */
export function atUnit({ units }: Where): readonly RecipePart[] {
  return units === undefined ? THREADING : [{ unit: units[0] }, ...THREADING];
}

/** The row that a fault of the figure begins at, else its unit; where it lies on neither, the selvedge or the ground. */
export function inFigure(where: Where): readonly RecipePart[] {
  if (where.rows !== undefined) return [...atRow(where), ...GROUND];
  return where.units === undefined ? atSelvedge(where) : [...atUnit(where), ...GROUND];
}

/** The selvedge that a finding lies on. */
export function atSelvedge({ ends }: Where): readonly RecipePart[] {
  const side = ends?.[0] === 1 ? "left" : "right";
  return [["ground", "selvedge", side], ["ground", "selvedge"], ...GROUND];
}
