import { printThreading, stepAfter } from "./threading-print.js";
import { threadingShape } from "./threading-shape.js";
import type { UnitShafts } from "./types.js";

type Threading = readonly UnitShafts[];

/** A unit where the order turns from upwards to downwards or back. */
export interface ThreadingPoint {
  /** From 0. */
  readonly unit: number;
  /** The shaft that the unit hangs on, from 1. */
  readonly shaft: number;
  /** Whether the order goes down or up after it. */
  readonly turns: "down" | "up";
}

/**
 * The points of a threading: units on one shaft with both neighbours one shaft lower (it turns down) or one higher
 * (it turns up).
 * @param threading an entry a unit, unit 1 first
 * @example threadingPoints(parseThreading("1-3 2 1")) // [{ unit: 2, shaft: 3, turns: "down" }]
 */
export function threadingPoints(threading: Threading): readonly ThreadingPoint[] {
  const points: ThreadingPoint[] = [];
  for (let unit = 1; unit + 1 < threading.length; unit++) {
    const before = stepAfter(threading, unit - 1);
    if (before === 0 || stepAfter(threading, unit) !== -before) continue;
    points.push({ unit, shaft: threading[unit]![0]!, turns: before > 0 ? "down" : "up" });
  }
  return points;
}

/**
 * A threading in words: how many units and shafts, the borders, the repeats, where the points are.
 * @param threading an entry a unit, unit 1 first
 * @example describeThreading(parseThreading("X 1-3 2 X")) // "6 units on 3 pattern shafts, 2 of them static. Left border of 1 unit: X. Then 1-3 2. Right border of 1 unit: X. A point on shaft 3 at unit 4."
 */
export function describeThreading(threading: Threading): string {
  const { left, start, repeat, times, end, right } = threadingShape(threading);
  const shafts = new Set(threading.flat()).size;
  const still = threading.filter((unit) => unit.length === 0).length;
  const joined = threading.filter((unit) => unit.length > 1).length;

  const size = [`${count(threading.length, "unit")} on ${count(shafts, "pattern shaft")}`];
  if (still > 0) size.push(`${still} of them static`);
  if (joined > 0) size.push(`${joined} on more than one shaft`);

  const sentences = [size.join(", ")];
  if (left.length > 0)
    sentences.push(`Left border of ${count(left.length, "unit")}: ${printThreading(left)}`);
  if (repeat.length > 0) {
    const parts = [orderText(repeat, times)];
    if (start.length > 0)
      parts.unshift(`${count(start.length, "unit")} to begin: ${printThreading(start)}; then`);
    else parts.unshift(left.length > 0 ? "then" : "the order is");
    if (end.length > 0) parts.push(`and ${count(end.length, "unit")} to close: ${printThreading(end)}`);
    sentences.push(capital(parts.join(" ")));
  }
  if (right.length > 0) {
    const alike = printThreading(right) === printThreading(left.toReversed());
    const mirrored = alike && left.length > 1 ? ", the left one mirrored" : "";
    sentences.push(`Right border of ${count(right.length, "unit")}${mirrored}: ${printThreading(right)}`);
  }
  const points = threadingPoints(threading);
  if (points.length > 0) sentences.push(pointsSentence(points));
  return `${sentences.join(". ")}.`;
}

/** The middle of a threading; one unit again and again is no repeat worth the name. */
function orderText(repeat: Threading, times: number): string {
  if (times === 1 || repeat.length === 1)
    return printThreading(Array.from({ length: times }, () => repeat).flat());
  return `${times} repeats of ${count(repeat.length, "unit")}: ${printThreading(repeat)}`;
}

/** Where the points are: the shafts they stand on, each with its units. */
function pointsSentence(points: readonly ThreadingPoint[]): string {
  const byShaft = new Map<number, number[]>();
  for (const { shaft, unit } of points) byShaft.set(shaft, [...(byShaft.get(shaft) ?? []), unit + 1]);
  const parts = [...byShaft]
    .sort(([a], [b]) => b - a)
    .map(([shaft, units]) => {
      const shown =
        units.length > 6 ? `${units.slice(0, 5).join(", ")} and so on to ${units.at(-1)}` : list(units);
      return `shaft ${shaft} at ${units.length === 1 ? "unit" : "units"} ${shown}`;
    });
  return `${points.length === 1 ? "A point" : "Points"} on ${parts.join("; on ")}`;
}

function list(numbers: readonly number[]): string {
  return numbers.length < 2 ? numbers.join() : `${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)}`;
}

function count(number: number, thing: string): string {
  return `${number} ${thing}${number === 1 ? "" : "s"}`;
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
