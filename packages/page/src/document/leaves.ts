import type { Table } from "./types.js";

/** Rows of a leaf: as many as a screen or a page holds at arm's length. */
const ROWS = 36;

/** Rows of one leaf of a table, under the heading that they begin with where there is one. */
export interface Leaf {
  /** First and one past the last row, from 0. */
  readonly start: number;
  readonly end: number;
}

/**
 * A table that rises is read leaf by leaf, each from its foot, so that no reader has to begin at the end of a long page.
 * A leaf ends before a heading where that leaves it no less than half full. A table that does not rise is one leaf.
 */
export function leavesOf({ rows, rising, heads = [] }: Table): Leaf[] {
  if (!rising || rows.length <= ROWS) return [{ start: 0, end: rows.length }];
  const leaves: Leaf[] = [];
  for (let start = 0; start < rows.length; ) {
    const most = Math.min(rows.length, start + ROWS);
    const head = heads.findLast(({ row }) => row > start + ROWS / 2 && row <= most);
    const end = most === rows.length ? most : (head?.row ?? most);
    leaves.push({ start, end });
    start = end;
  }
  return leaves;
}
