import type { Ratio } from "../weave/ratio.js";

/** The way a twill line runs, as the middle stroke of the letter: `z` to the right as it rises, `s` to the left. */
export type Direction = "z" | "s";

/** How many ends or picks go together: over and under, in turn. */
export type Pair = readonly [number, number];

/** A raised interlacement added beside every binding point: ends to the right, picks above; negative is left and below. */
export interface AddedPoint {
  /** Ends to the right of the binding point; below 0 to the left. */
  readonly right: number;
  /** Picks above the binding point; below 0 below it. */
  readonly above: number;
}

/** How a twill's order is broken. */
export type Break =
  | {
      /** How: the order halved or quartered, each second part back to front. */
      readonly by: "halves" | "fourths";
    }
  | {
      /** How: some shafts straight on, then some left out. */
      readonly by: "skipping";
      /** Shafts taken straight on, from 1. */
      readonly take: number;
      /** Shafts left out after them, from 1. */
      readonly skip: number;
    };

interface Ordered {
  /** Ends up and down in turn; one up and the rest down on the ends that are counted on when left out. */
  readonly ratio?: Ratio;
  /** Which way the line runs first; `z` when left out. */
  readonly direction?: Direction;
  /** The order lies in the treadling instead of the threading. */
  readonly alongPicks?: true;
}

/** The weave itself, before anything is added to it. */
export type BaseWeave =
  | {
      /** Which weave it is. */
      readonly kind: "plain";
    }
  | {
      /** Which weave it is. */
      readonly kind: "hopsack";
      /** Picks that go together, over and under in turn. */
      readonly picks: Pair;
      /** Ends that go together, over and under in turn; as the picks when left out. */
      readonly ends?: Pair;
    }
  | {
      /** Which weave it is. */
      readonly kind: "warp rib" | "weft rib";
      /** Threads that go together, picks of a warp rib and ends of a weft rib, over and under in turn. */
      readonly group: Pair;
    }
  | {
      /** Which weave it is. */
      readonly kind: "twill";
      /** Ends up and down in turn; one up and the rest down on the ends that are counted on when left out. */
      readonly ratio?: Ratio;
      /** Ends by which the line moves on a pick; 1 when left out. */
      readonly step?: number;
      /** Which way the line runs; `z` when left out. */
      readonly direction?: Direction;
    }
  | ({
      /** Which weave it is. */
      readonly kind: "pointed twill";
    } & Ordered)
  | ({
      /** Which weave it is. */
      readonly kind: "undulating twill";
      /** By how many shafts each place of the order moves on, begun again at the end; 0 repeats the shaft. */
      readonly moves: readonly number[];
    } & Ordered)
  | ({
      /** Which weave it is. */
      readonly kind: "herringbone twill";
      /** Places before the order turns, from 2. */
      readonly after: number;
    } & Ordered)
  | ({
      /** Which weave it is. */
      readonly kind: "broken twill";
      /** How its order is broken; by halves when left out. */
      readonly break?: Break;
    } & Ordered)
  | {
      /** Which weave it is. */
      readonly kind: "satin";
      /** Ends of a repeat; those that are counted on when left out. */
      readonly ends?: number;
      /** Ends by which the binding point moves on a pick; the least that makes a satin when left out. */
      readonly step?: number;
      /** The end bound on each pick, from 1; by the step when left out. */
      readonly order?: readonly number[];
      /** `s` for its mirror; `z` when left out. */
      readonly direction?: Direction;
      /** The warp lies on the face; the weft when left out. */
      readonly warpFaced?: true;
    }
  | {
      /** Which weave it is. */
      readonly kind: "crepe";
      /** Ends of a repeat. */
      readonly ends: number;
      /** Ends by which the binding point moves on a pick. */
      readonly step: number;
      /** Which way the line runs; `z` when left out. */
      readonly direction?: Direction;
    }
  | {
      /** Which weave it is. */
      readonly kind: "corkscrew";
      /** Ends of a repeat, an odd number. */
      readonly ends: number;
      /** Which way the line runs; `z` when left out. */
      readonly direction?: Direction;
    };

/** How the pattern weft is tied down, on the face and on the back, from one of its picks to the next. */
export type PatternTies =
  /** Not at all: its floats are as wide as the figure. */
  | {
      /** What ties it. */
      readonly in: "none";
    }
  /** By shafts of the ground that are named, in turn. */
  | {
      /** What ties it. */
      readonly in: "shafts";
      /** The ground shafts that tie it, from 1, in turn. */
      readonly shafts: readonly number[];
    }
  /**
   * By tie shafts of their own, an end on one of them at every so many ends: two in turn, three, or as many as are named, in
   * twill order. `within` is the longest float, in ends, that the ties leave; one end in each unit when left out.
   */
  | {
      /** What ties it: two tie shafts in turn, or three. */
      readonly in: "halves" | "thirds";
      /** The longest float, in ends, that the ties leave; one end in each unit when left out. */
      readonly within?: number;
    }
  | {
      /** What ties it: tie shafts in twill order. */
      readonly in: "twill";
      /** How many tie shafts there are. */
      readonly shafts: number;
      /** The longest float, in ends, that the ties leave; one end in each unit when left out. */
      readonly within?: number;
    };

/** A weave as a weaver writes it down. What is left out has a usual value, and is left out again in print. */
export interface WeaveDescription {
  /** The weave that everything else is added to. */
  readonly base: BaseWeave;
  /** Raised points added beside every binding point: an extended satin, a crepe. */
  readonly plus?: readonly AddedPoint[];
  /** After each pick of the weave a pick on which the figure alone has a say. */
  readonly patternWeft?: true;
  /** How the pattern weft is tied; in halves when left out. */
  readonly ties?: PatternTies;
}
