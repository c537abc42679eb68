import type { BitGrid } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { expand } from "./expand.js";
import type { UnitShafts } from "./types.js";

/** A threading with its lifts: all that a pattern harness is told. */
export interface HarnessPlan {
  /** One entry a unit, unit 1 first; `[]` is a static unit. */
  readonly threading: readonly UnitShafts[];
  /** One entry a row, row 1 (woven first) first. */
  readonly lifts: readonly ShaftSet[];
}

/**
 * The chart that a threading and its lifts weave: a row a lift (row 0 woven first), a column a unit, raised where the
 * unit is drawn.
 * @param plan the threading, an entry a unit, and the lifts, an entry a row
 * @throws {UnitsError} as `expand`, without units or rows, or with sets that are none
 * @example toText(chartOf({ threading: [[1], [], [1, 2]], lifts: [[1], [2]] })) // "..#\n#.#"
 */
export function chartOf(plan: HarnessPlan): BitGrid {
  const ground = { shafts: 1, threading: [1], steps: [{ raise: [], sink: [] }] };
  return expand({ ...plan, ground, unitEnds: 1, picksPerRow: 1 }).drawn;
}
