import type { WorkingLine } from "./task.js";

/** A working under way: each line is rounded as it is printed, and the next goes on from there, as on the board. */
export interface Board {
  readonly steps: readonly WorkingLine[];
  /** Works a line out. @param value what the sum comes to before it is rounded */
  readonly line: (words: string, sum: string, value: number, decimals: number, unit: string) => number;
}

/**
 * An empty board.
 * @example boardOf().line("ends", "81 × 4", 324, 0, "ends") // 324
 */
export function boardOf(): Board {
  const steps: WorkingLine[] = [];
  return {
    steps,
    line: (words, sum, value, decimals, unit) => {
      const result = rounded(value, decimals);
      steps.push({ words, sum, result, unit });
      return Number(result);
    },
  };
}

/**
 * A number to so many decimals, halves away from nought as a calculator's user rounds them; the last digits of a binary
 * fraction do not turn a half downwards.
 */
function rounded(value: number, decimals: number): string {
  const factor = 10 ** decimals;
  return (Math.round(value * factor * (1 + 1e-12)) / factor).toFixed(decimals);
}
