import type { ShaftSet } from "@drawcord/ground";

/** The units that drafts give the spacing and thickness of threads in; a decipoint is 1/720 inch. */
export type ThreadUnit = "centimeters" | "inches" | "decipoints";

/** A measure of the threads of one system, in the unit of the system. */
export interface ThreadMeasure {
  /** What every thread has that has none of its own. */
  readonly all?: number;
  /** What each thread has, where some have their own. */
  readonly each?: readonly number[];
}

/** How the threads of one system look and lie. */
export interface ThreadLook {
  /** The colour of each thread, as `#rrggbb`. */
  readonly colours?: readonly `#${string}`[];
  /** The unit of spacing and thickness; default decipoints. */
  readonly unit?: ThreadUnit;
  /** From the middle of a thread to the middle of the next. */
  readonly spacing?: ThreadMeasure;
  /** How thick each thread is. */
  readonly thickness?: ThreadMeasure;
}

/** How the shafts are moved on each pick: by treadles tied to shafts, or by a lift plan. */
export type Shedding =
  | {
      /** Which of these it is. */
      readonly kind: "tie-up";
      /** The shafts each treadle is tied to, treadle 1 first. */
      readonly tieUp: readonly ShaftSet[];
      /** The treadles of each pick, pick 1 (woven first) first. */
      readonly treadling: readonly ShaftSet[];
    }
  | {
      /** Which of these it is. */
      readonly kind: "lift-plan";
      /** The shafts moved on each pick, pick 1 first. */
      readonly liftPlan: readonly ShaftSet[];
    };

/** A plain shaft draft: each end on its shafts, each pick with the shafts it moves. */
export interface ShaftDraft {
  /** What it is called. */
  readonly title?: string;
  /** Who wrote it. */
  readonly author?: string;
  /** Notes, line by line. */
  readonly notes?: readonly string[];
  /** How many shafts there are. */
  readonly shafts: number;
  /** The shafts of each end, end 1 first; `[]` hangs on none. */
  readonly threading: readonly ShaftSet[];
  /** Which shafts are moved on each pick, by treadles or by a lift plan. */
  readonly shedding: Shedding;
  /** Whether a moved shaft rises (jack and countermarch draw-ups, dobbies) or sinks. */
  readonly rising: boolean;
  /** How the ends look and lie. */
  readonly warp: ThreadLook;
  /** How the picks look and lie. */
  readonly weft: ThreadLook;
}
