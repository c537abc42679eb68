import type { WorkingLine } from "./task.js";

/** One line for the board before it is worked out. */
interface Line {
  /** The formula in words, and in symbols. */
  readonly words: string;
  readonly symbols: string;
  /** The numbers put in. */
  readonly sum: string;
  /** What the sum comes to before it is rounded. */
  readonly value: number;
  readonly decimals: number;
  readonly unit: string;
}

/** A working under way: each line is rounded as it is printed, and the next goes on from there, as on the board. */
export interface Board {
  readonly steps: readonly WorkingLine[];
  /** Works a line out. */
  readonly line: (line: Line) => number;
}

/**
 * An empty board.
 * @example boardOf().line({ words: "ends", symbols: "e", sum: "81 × 4", value: 324, decimals: 0, unit: "ends" }) // 324
 */
export function boardOf(): Board {
  const steps: WorkingLine[] = [];
  return {
    steps,
    line: ({ decimals, sum, symbols, unit, value, words }) => {
      const result = rounded(value, decimals);
      const even = Math.abs(value - Number(result)) < 1e-9;
      const places = ["to a whole number", "to 1 decimal"][decimals] ?? `to ${decimals} decimals`;
      steps.push({ words, symbols, sum, result, unit, rounding: even ? "" : `rounded ${places}` });
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
