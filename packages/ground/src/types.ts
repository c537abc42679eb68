/** Shafts by number, 1-based and ascending. */
export type ShaftSet = readonly number[];

/** What one treadle does to the ground harness for one pick; shafts in neither set stay where the pattern harness puts them. */
export interface GroundStep {
  /** Shafts raised. Shares no shaft with `sink`. */
  readonly raise: ShaftSet;
  /** Shafts sunk. */
  readonly sink: ShaftSet;
  /** The weft of this pick, by name; left out, it is the ground weft. */
  readonly weft?: string;
}

/** A ground harness, threaded and with its treadling. */
export interface Ground {
  /** How many shafts the ground harness has. */
  readonly shafts: number;
  /** The shaft of each end, 1-based; repeats over the ends. */
  readonly threading: readonly number[];
  /** One entry a pick; repeats over the picks. */
  readonly steps: readonly GroundStep[];
}
