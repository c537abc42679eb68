/** Lists for use at the loom. */
import { UnitsError } from "./error.js";
import { unitText } from "./threading-print.js";
import type { UnitShafts } from "./types.js";

/** How a threading is listed. */
export interface ThreadingListOptions {
  /** Where the list begins: `right`, as seen from the weaver's bench, or `left`; `right` by default. */
  readonly from?: "right" | "left";
  /** Units in each group to be ticked off; 10 by default. */
  readonly group?: number;
}

/** Some units to be threaded one after the other, then ticked off. */
export interface ThreadingGroup {
  /** The units, from 0, in the order in which they are threaded. */
  readonly units: readonly number[];
  /** Their shafts as text, in the same order; `X` is a static unit. */
  readonly shafts: readonly string[];
  /** How many units are threaded when the group is done. */
  readonly done: number;
}

/**
 * The units in the order in which they are threaded, in counted groups that can be ticked off. From the right, the last
 * unit comes first.
 * @param threading an entry a unit, unit 1 first
 * @param options from which side, and how many units are a group
 * @throws {UnitsError} `bad-size` when `group` is not a whole number from 1
 * @example threadingList([[1], [2], []], { group: 2 })[0] // { units: [2, 1], shafts: ["X", "2"], done: 2 }
 */
export function threadingList(
  threading: readonly UnitShafts[],
  options: ThreadingListOptions = {},
): readonly ThreadingGroup[] {
  const { from = "right", group = 10 } = options;
  if (!Number.isSafeInteger(group) || group < 1) {
    throw new UnitsError(
      "bad-size",
      `groups of ${group} units are asked for; expected a whole number from 1`,
      {
        group,
      },
    );
  }
  const order = [...threading.keys()];
  if (from === "right") order.reverse();
  return Array.from({ length: Math.ceil(order.length / group) }, (_, i) => {
    const units = order.slice(i * group, (i + 1) * group);
    const shafts = units.map((unit) => unitText(threading[unit]!));
    return { units, shafts, done: i * group + units.length };
  });
}
