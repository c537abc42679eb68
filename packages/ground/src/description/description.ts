import type { Ratio } from "../weave/ratio.js";

/** The way a twill line runs, as the middle stroke of the letter: `z` to the right as it rises, `s` to the left. */
export type Direction = "z" | "s";

/** How many ends or picks go together: over and under, in turn. */
export type Pair = readonly [number, number];

/** A raised interlacement added beside every binding point: ends to the right, picks above; negative is left and below. */
export interface AddedPoint {
  readonly right: number;
  readonly above: number;
}

/** How a twill's order is broken. */
export type Break =
  | { readonly by: "halves" | "fourths" }
  | { readonly by: "skipping"; readonly take: number; readonly skip: number };

interface Ordered {
  readonly ratio?: Ratio;
  /** Which way the line runs first; `z` when left out. */
  readonly direction?: Direction;
  /** The order lies in the treadling instead of the threading. */
  readonly alongPicks?: true;
}

/** The weave itself, before anything is added to it. */
export type BaseWeave =
  | { readonly kind: "plain" }
  | { readonly kind: "hopsack"; readonly picks: Pair; readonly ends?: Pair }
  | { readonly kind: "warp rib" | "weft rib"; readonly group: Pair }
  | {
      readonly kind: "twill";
      readonly ratio?: Ratio;
      readonly step?: number;
      readonly direction?: Direction;
    }
  | ({ readonly kind: "pointed twill" } & Ordered)
  | ({ readonly kind: "undulating twill"; readonly moves: readonly number[] } & Ordered)
  | ({ readonly kind: "herringbone twill"; readonly after: number } & Ordered)
  | ({ readonly kind: "broken twill"; readonly break?: Break } & Ordered)
  | {
      readonly kind: "satin";
      readonly ends?: number;
      readonly step?: number;
      readonly order?: readonly number[];
      readonly direction?: Direction;
      readonly warpFaced?: true;
    }
  | { readonly kind: "crepe"; readonly ends: number; readonly step: number; readonly direction?: Direction }
  | { readonly kind: "corkscrew"; readonly ends: number; readonly direction?: Direction };

/** How the pattern weft is tied down, on the face and on the back, from one of its picks to the next. */
export type PatternTies =
  /** Not at all: its floats are as wide as the figure. */
  | { readonly in: "none" }
  /** By shafts of the ground that are named, in turn. */
  | { readonly in: "shafts"; readonly shafts: readonly number[] }
  /**
   * By tie shafts of their own, an end on one of them at every so many ends: two in turn, three, or as many as are named, in
   * twill order. `within` is the longest float, in ends, that the ties leave; one end in each unit when left out.
   */
  | { readonly in: "halves" | "thirds"; readonly within?: number }
  | { readonly in: "twill"; readonly shafts: number; readonly within?: number };

/** A weave as a weaver writes it down. What is left out has a usual value, and is left out again in print. */
export interface WeaveDescription {
  readonly base: BaseWeave;
  /** Raised points added beside every binding point: an extended satin, a crepe. */
  readonly plus?: readonly AddedPoint[];
  /** After each pick of the weave a pick on which the figure alone has a say. */
  readonly patternWeft?: true;
  /** How the pattern weft is tied; in halves when left out. */
  readonly ties?: PatternTies;
}
