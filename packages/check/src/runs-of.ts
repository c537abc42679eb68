import type { Span, Where } from "./report.js";

/** The stretches that numbers in ascending order make. */
export function stretchesOf(numbers: readonly number[]): Span[] {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last !== undefined && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs;
}

/** Every number of some stretches. */
export function numbersIn(stretches: readonly Span[]): number[] {
  return stretches.flatMap(([first, last]) => Array.from({ length: last + 1 - first }, (_, i) => first + i));
}

/** Units or rows by their numbers as a place: from the first to the last, and stretch by stretch where it has holes. */
export function whereOf(of: "units" | "rows", numbers: readonly number[]): Where {
  const runs = stretchesOf(numbers);
  const [first, last] = [numbers[0], numbers.at(-1)];
  if (first === undefined || last === undefined) return {};
  return { [of]: [first, last], ...(runs.length > 1 && { runs: { [of]: runs } }) };
}

/** The rows (from 1) that draw a shaft. */
export function rowsDrawing(lifts: readonly (readonly number[])[], shaft: number): number[] {
  return lifts.flatMap((lift, row) => (lift.includes(shaft) ? [row + 1] : []));
}
