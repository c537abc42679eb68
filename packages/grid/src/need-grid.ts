import type { GridData } from "./data.js";
import { GridError } from "./error.js";

/**
 * Refuses what is no grid, nor the data of one.
 * @param value what was given
 * @throws {GridError} `not-a-grid`
 * @example needGrid({}) // throws not-a-grid
 */
export function needGrid(value: unknown): asserts value is GridData {
  const { columns, rows, words } = (value ?? {}) as Partial<GridData>;
  if (typeof rows === "number" && typeof columns === "number" && typeof words?.length === "number") return;
  throw new GridError("not-a-grid", "a grid was expected: rows, columns and words", { found: typeof value });
}
