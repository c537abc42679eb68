import { runsOf } from "@drawcord/base";
import type { Woven } from "../woven.js";

/** One unlike lift as a stick: the units that it carries, and the rows in which it is used. */
export interface Stick {
  /** Counted from the edge at which the weaver works, from 1, ascending. */
  readonly units: readonly number[];
  /** From 1, ascending. */
  readonly rows: readonly number[];
}

/**
 * The lifts of a plan as sticks, in the order in which they are first used. A row that draws no unit takes none.
 * @param fromRight whether the weaver counts from the right edge
 */
export function sticksOf({ expansion, draft }: Woven, fromRight: boolean): Stick[] {
  const { squares } = expansion;
  const sticks = new Map<string, { units: number[]; rows: number[] }>();
  for (const row of draft.lifts.keys()) {
    const drawn = Array.from({ length: squares.columns }, (_, unit) => unit).filter((unit) =>
      squares.get(row, unit),
    );
    if (drawn.length === 0) continue;
    const units = drawn.map((unit) => (fromRight ? squares.columns - unit : unit + 1)).sort((a, b) => a - b);
    const known = sticks.get(units.join(" "));
    if (known === undefined) sticks.set(units.join(" "), { units, rows: [row + 1] });
    else known.rows.push(row + 1);
  }
  return [...sticks.values()];
}

/**
 * Whether two sticks that lie in the warp can pass each other. What lies over one stick must lie over the one below it too,
 * so all units of one of them must be among those of the other.
 * @example pass([1, 2], [1, 2, 5]) // true
 */
export function pass(a: readonly number[], b: readonly number[]): boolean {
  const [few, many] = a.length <= b.length ? [a, b] : [b, a];
  const among = new Set(many);
  return few.every((unit) => among.has(unit));
}

/** Numbers in runs, all of them. */
export function runsText(numbers: readonly number[]): string {
  return runsOf(numbers, Number.POSITIVE_INFINITY, " ").replaceAll("-", "–");
}

/**
 * How a stick is picked up by counting: how many units are left, how many are taken, left, taken and so on, from the edge.
 * @param units ascending, from 1
 * @returns numbers by turns left and taken, beginning with those left, which may be none
 * @example leaveAndTake([3, 4, 7]) // [2, 2, 2, 1]
 */
export function leaveAndTake(units: readonly number[]): number[] {
  const counts: number[] = [];
  let next = 1;
  for (let i = 0; i < units.length; ) {
    let end = i;
    while (units[end + 1] === units[end]! + 1) end++;
    counts.push(units[i]! - next, end - i + 1);
    next = units[end]! + 1;
    i = end + 1;
  }
  return counts;
}
