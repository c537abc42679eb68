/** The orders in which units are threaded; each returns one entry a unit, unit 1 first. */
import { UnitsError } from "./error.js";
import { unite } from "./shaft-sets.js";
import type { UnitShafts } from "./types.js";

type Threading = readonly UnitShafts[];

/** Refuses a count that is not a whole number from `least`. */
function checkCount(what: string, found: number, least = 1): void {
  if (Number.isSafeInteger(found) && found >= least) return;
  throw new UnitsError("bad-size", `${what} were given as ${found}; expected a whole number from ${least}`, {
    found,
    least,
  });
}

/** The shafts from one to another, up or down, a unit each. */
function run(from: number, to: number): Threading {
  const step = Math.sign(to - from);
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => [from + i * step]);
}

/**
 * The order again and again.
 * @param threading the order, an entry a unit
 * @param times how often it comes, a whole number from 1
 * @throws {UnitsError} `bad-size` when `times` is not a whole number from 1
 * @example printThreading(repeatedThreading(parseThreading("1-3"), 2)) // "(1-3)*2"
 */
export function repeatedThreading(threading: Threading, times: number): Threading {
  checkCount("repeats", times);
  return Array.from({ length: times }, () => threading).flat();
}

/**
 * Straight: 1 to the last shaft, again and again.
 * @param shafts how many shafts, from 1
 * @param repeats how often the run comes; once by default
 * @throws {UnitsError} `bad-size` when a number is not whole and from 1
 * @example printThreading(straightThreading(8, 3)) // "(1-8)*3"
 */
export function straightThreading(shafts: number, repeats = 1): Threading {
  checkCount("shafts", shafts);
  return repeatedThreading(run(1, shafts), repeats);
}

/**
 * Repeated points: up to the last shaft and back to the second, again and again; `closed` adds the first shaft once
 * more, so that both sides are alike.
 * @param shafts how many shafts, from 1
 * @param repeats how often the points come; once by default
 * @param closed whether shaft 1 comes once more at the end; default false
 * @throws {UnitsError} `bad-size` when a number is not whole and from 1
 * @example printThreading(pointThreading(8, 4, true)) // "(1-8 7-2)*4 1"
 */
export function pointThreading(shafts: number, repeats = 1, closed = false): Threading {
  checkCount("shafts", shafts);
  const point = shafts < 3 ? run(1, shafts) : [...run(1, shafts), ...run(shafts - 1, 2)];
  const points = repeatedThreading(point, repeats);
  return closed ? [...points, [1]] : points;
}

/**
 * Broken: the lower half of the shafts upwards, then the upper half downwards, so that no two neighbours at the break
 * stand next to each other on the loom.
 * @param shafts how many shafts, from 1
 * @param repeats how often the order comes; once by default
 * @throws {UnitsError} `bad-size` when a number is not whole and from 1
 * Source: common practice (the broken twill's 1 2 4 3).
 * @example printThreading(brokenThreading(8)) // "1-4 8-5"
 */
export function brokenThreading(shafts: number, repeats = 1): Threading {
  checkCount("shafts", shafts);
  const half = Math.ceil(shafts / 2);
  return repeatedThreading(shafts === 1 ? run(1, 1) : [...run(1, half), ...run(shafts, half + 1)], repeats);
}

/**
 * Mirrored: the order and then the same backwards. The last unit is the point and comes once, or twice when `twice`.
 * @param threading the order, an entry a unit
 * @param twice whether the point comes twice; default false
 * @example printThreading(mirroredThreading(parseThreading("X 1-3"))) // "X 1-3 2 1 X"
 */
export function mirroredThreading(threading: Threading, twice = false): Threading {
  const back = threading.toReversed();
  return [...threading, ...(twice ? back : back.slice(1))];
}

/**
 * An order between borders; the right border is the left one mirrored unless it is given.
 * @param centre what stands between the borders
 * @param left the border on the left
 * @param right the border on the right; the left one mirrored by default
 * @example printThreading(borderedThreading(parseThreading("1-4"), parseThreading("X*2 9"))) // "X*2 9 1-4 9 X*2"
 */
export function borderedThreading(centre: Threading, left: Threading, right = left.toReversed()): Threading {
  return [...left, ...centre, ...right];
}

/**
 * Units that no pattern shaft draws.
 * @param units how many units, from 0
 * @throws {UnitsError} `bad-size` when `units` is not a whole number from 0
 * @example staticThreading(2) // [[], []]
 */
export function staticThreading(units: number): Threading {
  checkCount("static units", units, 0);
  return Array.from({ length: units }, () => []);
}

/**
 * The same units hung on another set of shafts besides their own, unit by unit.
 * @param threading the order, an entry a unit
 * @param also one entry a unit; `[]` adds nothing
 * @throws {UnitsError} `wrong-length` when there is not an entry for each unit
 * @example printThreading(threadingAlsoOn([[1], [2], []], [[9], [], [9]])) // "1+9 2 9"
 */
export function threadingAlsoOn(threading: Threading, also: Threading): Threading {
  if (also.length !== threading.length) {
    throw new UnitsError(
      "wrong-length",
      `shafts are added to ${also.length} units; the threading has ${threading.length} units`,
      { found: also.length, expected: threading.length },
    );
  }
  return threading.map((unit, i) => unite(unit, also[i]!));
}

/**
 * Single-unit draw: a cord of its own for every unit.
 * @param units how many units, from 1
 * @throws {UnitsError} `bad-size` when `units` is not a whole number from 1
 * @example printThreading(singleUnitThreading(120)) // "1-120"
 */
export function singleUnitThreading(units: number): Threading {
  return straightThreading(units);
}
