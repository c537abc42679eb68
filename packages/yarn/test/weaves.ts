import type { Drawdown } from "../src/index.js";

/** A drawdown from rows of `#` (raised) and `.`, the first pick first. */
export function drawdown(...rows: readonly string[]): Drawdown {
  return {
    rows: rows.length,
    columns: rows[0]?.length ?? 0,
    get: (row, column) => rows[row]![column] === "#",
  };
}

/** A counted weave: one raised end a pick, moved by a step. */
function counted(ends: number, step: number): Drawdown {
  return { rows: ends, columns: ends, get: (row, column) => (row * step) % ends === column };
}

export const plain = drawdown("#.", ".#");
export const twill22 = drawdown("##..", ".##.", "..##", "#..#");
export const twill21 = drawdown("##.", ".##", "#.#");
export const twill13 = counted(4, 1);
export const brokenTwill = drawdown("#...", ".#..", "...#", "..#.");
export const satin5 = counted(5, 2);
export const satin8 = counted(8, 3);
