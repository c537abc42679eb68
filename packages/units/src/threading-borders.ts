import type { UnitShafts } from "./types.js";

/** The units along both sides of a threading that hang on shafts of the border alone, or on none. */
export interface ThreadedBorders {
  /** Units from the left side. */
  readonly left: number;
  /** Units from the right side. */
  readonly right: number;
  /** The shafts that draw the border, ascending. */
  readonly shafts: readonly number[];
}

/**
 * The borders of a threading: from each side inwards, the units that are static or hang on shafts which have units on both
 * sides and none in the middle half.
 * @param threading one entry a unit, unit 1 first
 * @returns how many units each border takes, and its shafts
 * @example bordersOf([[], [9], [1], [2], [3], [2], [1], [9], []]) // { left: 2, right: 2, shafts: [9] }
 */
export function bordersOf(threading: readonly UnitShafts[]): ThreadedBorders {
  const quarter = Math.floor(threading.length / 4);
  const within = new Set(threading.slice(quarter, threading.length - quarter).flat());
  const ofLeft = new Set(threading.slice(0, quarter).flat());
  const ofRight = new Set(threading.slice(threading.length - quarter).flat());
  const isOfBorder = (unit: UnitShafts) =>
    unit.every((shaft) => ofLeft.has(shaft) && ofRight.has(shaft) && !within.has(shaft));
  const first = threading.findIndex((unit) => !isOfBorder(unit));
  const last = threading.findLastIndex((unit) => !isOfBorder(unit));
  if (first < 0) return { left: 0, right: 0, shafts: [] };
  const shafts = new Set([...threading.slice(0, first), ...threading.slice(last + 1)].flat());
  return { left: first, right: threading.length - 1 - last, shafts: [...shafts].sort((a, b) => a - b) };
}
