import type { ShaftSet } from "@drawcord/ground";
import { picksOfEachRow } from "./sizes.js";
import type { UnitDraft } from "./types.js";

/** What one row asks of the weaver. */
export interface RowWork {
  /** From 0. */
  readonly row: number;
  /** The first and the last pick of the row, from 0. */
  readonly picks: readonly [first: number, last: number];
  /** The shafts drawn. */
  readonly drawn: ShaftSet;
  /** The handles drawn that the row before left. */
  readonly pulled: ShaftSet;
  /** The handles let go that the row before held. */
  readonly released: ShaftSet;
  /** Units drawn up. */
  readonly units: number;
  /** The lingos drawn up, in grams; none where the weight of a lingo is not known. */
  readonly grams: number | undefined;
}

/** What a lift plan asks of the weaver and the loom. */
export interface LiftWork {
  /** Row by row, row 1 first. */
  readonly rows: readonly RowWork[];
  /** The first of the rows that draw most units. */
  readonly heaviest: RowWork;
  /** Handles pulled in all rows together. */
  readonly pulls: number;
  /** Handles pulled or let go from row to row, the first row's pulls included. */
  readonly changes: number;
  /** Picks of all rows together. */
  readonly picks: number;
}

/** What the weight of a lingo is, where it is known. */
export interface LiftWorkOptions {
  /** Grams of one lingo; not known by default. */
  readonly lingoGrams?: number;
}

/**
 * What each row of a draft draws: units, weight, handles pulled and let go; and what all rows come to. The draft must be
 * one that can be expanded.
 * @param draft a draft as `checkDraft` passes it
 * @param options what a lingo weighs, in grams, where weights are wanted
 * @example liftWork(draft, { lingoGrams: 20 }).heaviest.grams // 60
 */
export function liftWork(draft: UnitDraft, options: LiftWorkOptions = {}): LiftWork {
  const { threading, lifts } = draft;
  const picks = picksOfEachRow(draft);
  const { lingoGrams } = options;
  const unitsOn = new Map<number, number[]>();
  threading.forEach((shafts, unit) => {
    for (const shaft of shafts) {
      const on = unitsOn.get(shaft);
      if (on === undefined) unitsOn.set(shaft, [unit]);
      else on.push(unit);
    }
  });
  const shared = threading.some((shafts) => shafts.length > 1);
  const unitsOf = (lift: ShaftSet) => {
    const units = lift.map((shaft) => unitsOn.get(shaft) ?? []);
    return shared ? new Set(units.flat()).size : units.reduce((sum, on) => sum + on.length, 0);
  };

  let pick = 0;
  let before: ShaftSet = [];
  const rows = lifts.map((drawn, row): RowWork => {
    const first = pick;
    pick += picks[row]!;
    const units = unitsOf(drawn);
    const { pulled, released } = handleChanges(before, drawn);
    before = drawn;
    const grams = lingoGrams === undefined ? undefined : units * lingoGrams;
    return { row, picks: [first, pick - 1], drawn, pulled, released, units, grams };
  });
  const pulls = rows.reduce((sum, { pulled }) => sum + pulled.length, 0);
  const releases = rows.reduce((sum, { released }) => sum + released.length, 0);
  const heaviest = rows.reduce((most, row) => (row.units > most.units ? row : most));
  return { rows, heaviest, pulls, changes: pulls + releases, picks: pick };
}

/**
 * The handles pulled and let go between two lifts.
 * @param before the shafts drawn before
 * @param after the shafts drawn now
 * @example handleChanges([1, 2], [2, 3]) // { pulled: [3], released: [1] }
 */
export function handleChanges(
  before: ShaftSet,
  after: ShaftSet,
): {
  /** The shafts that are drawn now and were not, ascending. */
  readonly pulled: ShaftSet;
  /** The shafts that were drawn and are no more, ascending. */
  readonly released: ShaftSet;
} {
  const held = new Set(before);
  const drawn = new Set(after);
  return {
    pulled: after.filter((shaft) => !held.has(shaft)),
    released: before.filter((shaft) => !drawn.has(shaft)),
  };
}
