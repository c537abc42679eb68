import type { BitGrid } from "@drawcord/grid";
import type { Ground, ShaftSet } from "@drawcord/ground";

/** The pattern shafts one unit hangs on; `[]` is a static unit. */
export type UnitShafts = ShaftSet;

/** Figured cloth as it is threaded and lifted: the ground harness in front, units drawn by pattern shafts behind. */
export interface UnitDraft {
  /** The weave in front: its shafts, threading and treadling. */
  readonly ground: Ground;
  /** Ends in each unit: one number for all, or one entry a unit. */
  readonly unitEnds: number | readonly number[];
  /** One entry a unit, unit 1 first. */
  readonly threading: readonly UnitShafts[];
  /** The pattern shafts drawn in each row, row 1 (woven first) first. */
  readonly lifts: readonly ShaftSet[];
  /** Picks for which a row's lift is held: one number for all, or one entry a row. */
  readonly picksPerRow: number | readonly number[];
  /** Ground shafts of the ends outside the units; never drawn. */
  readonly selvedge?: {
    /** Ground shafts of the ends left of unit 1, from the left. */
    readonly left?: readonly number[];
    /** Ground shafts of the ends right of the last unit, from the left. */
    readonly right?: readonly number[];
  };
}

/** A draft worked out to every end and pick. Rows are picks, row 0 woven first; columns are ends, selvedge left, units, selvedge right. */
export interface Expansion {
  /** Picks x ends: raised (1) where the end lies over the pick on the face. */
  readonly drawdown: BitGrid;
  /** Picks x ends: 1 where the unit of the end is drawn in the row of the pick. */
  readonly drawn: BitGrid;
  /** Rows x units: 1 where the row draws the unit. */
  readonly squares: BitGrid;
  /** The unit (from 0) of each end, -1 for a selvedge end. */
  readonly unitOfEnd: Int32Array;
  /** The ground shaft (from 1) of each end. */
  readonly shaftOfEnd: Int32Array;
  /** The row (from 0) of each pick. */
  readonly rowOfPick: Int32Array;
  /** The ground step (from 0) of each pick. */
  readonly stepOfPick: Int32Array;
}
