import type { Mistake } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";

/** By what the ends of a selvedge go: the ground threading, the other selvedge, or an order of their own. */
export type SelvedgeOrder = "ground" | "other" | "other-turned" | "turn-about" | "groups" | "straight";

/**
 * What was written wrong, as data: its kind and what it says besides. Units, rows, ends, steps and shafts count from 1;
 * `again` is how many other times a row is woven, or a unit threaded, by what is written once.
 */
export type Slip =
  /** A unit hangs on other shafts than the rest of the threading says; on none where it is static. */
  | {
      /** Which slip it is. */
      readonly slip: "unit-shafts";
      /** The unit, from 1. */
      readonly unit: number;
      /** How many other times it comes by what is written once. */
      readonly again: number;
      /** The shafts that it hangs on; none where it is static. */
      readonly shafts: ShaftSet;
      /** The shafts that the rest of the threading says; none for a static unit. */
      readonly says: ShaftSet;
    }
  /** A unit on these shafts is missing after that one; after none where it is the first. */
  | {
      /** Which slip it is. */
      readonly slip: "unit-missing";
      /** The one that it is missing after, from 1; 0 where it is the first. */
      readonly after: number;
      /** The shafts that it hangs on; none for a static unit. */
      readonly shafts: ShaftSet;
    }
  /** A unit, on these shafts, is one too many. */
  | {
      /** Which slip it is. */
      readonly slip: "unit-extra";
      /** The unit, from 1. */
      readonly unit: number;
      /** How many other times it comes by what is written once. */
      readonly again: number;
      /** The shafts that it hangs on; none where it is static. */
      readonly shafts: ShaftSet;
    }
  /** Two units are exchanged. */
  | {
      /** Which slip it is. */
      readonly slip: "units-exchanged";
      /** The two units, from 1. */
      readonly units: readonly [number, number];
      /** How many other times it comes by what is written once. */
      readonly again: number;
    }
  /** A row leaves shafts down that the rest of the plan draws, or draws others that it leaves. */
  | {
      /** Which slip it is. */
      readonly slip: "row-shafts";
      /** The row, from 1. */
      readonly row: number;
      /** How many other times it comes by what is written once. */
      readonly again: number;
      /** Shafts that it leaves down and should draw. */
      readonly leaves: ShaftSet;
      /** Shafts that it draws and should leave down. */
      readonly draws: ShaftSet;
    }
  /** A row that draws these shafts is missing after that one; after none where it is the first. */
  | {
      /** Which slip it is. */
      readonly slip: "row-missing";
      /** The one that it is missing after, from 1; 0 where it is the first. */
      readonly after: number;
      /** The shafts that it draws; none for an empty row. */
      readonly shafts: ShaftSet;
    }
  /** A row is one too many. */
  | {
      /** Which slip it is. */
      readonly slip: "row-extra";
      /** The row, from 1. */
      readonly row: number;
      /** How many other times it comes by what is written once. */
      readonly again: number;
    }
  /** Two rows are exchanged. */
  | {
      /** Which slip it is. */
      readonly slip: "rows-exchanged";
      /** The rows, from 1. */
      readonly rows: readonly [number, number];
    }
  /** Rows, from the first to the last, whose shafts are so many numbers too low; below 0 too high. */
  | {
      /** Which slip it is. */
      readonly slip: "rows-shifted";
      /** The rows, from 1. */
      readonly rows: readonly [number, number];
      /** Shaft numbers that they are too low; below 0 too high. */
      readonly by: number;
    }
  /** Rows draw a shaft that stands for static units, or on which no unit hangs. */
  | {
      /** Which slip it is. */
      readonly slip: "drawn-in-vain";
      /** The rows, from 1. */
      readonly rows: readonly number[];
      /** The shaft, from 1. */
      readonly shaft: number;
      /** What hangs on the shaft: static units, or nothing. */
      readonly hangs: "static" | "nothing";
    }
  /** A number, by its name, is stated otherwise than it comes out. */
  | {
      /** Which slip it is. */
      readonly slip: "misstated";
      /** The stated number, by its name in the recipe. */
      readonly stated: string;
      /** What is stated. */
      readonly claim: number;
      /** The unit of both; the thing itself where it is counted. */
      readonly unit: string;
      /** What is worked out. */
      readonly found: number;
    }
  /** A row is held for other picks than all others, or than its counterpart. */
  | {
      /** Which slip it is. */
      readonly slip: "row-picks";
      /** The row, from 1. */
      readonly row: number;
      /** The picks that it is held for. */
      readonly picks: number;
      /** The picks that it should be held for. */
      readonly usual: number;
      /** The row on the other side of the middle, from 1; left out where all others say so. */
      readonly counterpart?: number;
    }
  /** An end of a selvedge is on another shaft than its order says. */
  | {
      /** Which slip it is. */
      readonly slip: "selvedge-end";
      /** The side of the cloth. */
      readonly side: "left" | "right";
      /** The end of the selvedge, from 1 at the left. */
      readonly end: number;
      /** The shaft, from 1. */
      readonly shaft: number;
      /** What it should be by the rest. */
      readonly says: number;
      /** The order that says so. */
      readonly by: SelvedgeOrder;
    }
  /** The ground is begun so many steps too early; below 0 too late. */
  | {
      /** Which slip it is. */
      readonly slip: "ground-begun";
      /** Steps that it is begun too early; below 0 too late. */
      readonly steps: number;
    }
  /** The ground raises what it should sink. */
  | {
      /** Which slip it is. */
      readonly slip: "ground-swapped";
    }
  /** A row draws, or leaves, a shaft that nothing about it draws, or leaves. */
  | {
      /** Which slip it is. */
      readonly slip: "stray";
      /** The row, from 1. */
      readonly row: number;
      /** The shaft, from 1. */
      readonly shaft: number;
      /** Whether it is drawn alone, or left alone. */
      readonly drawn: boolean;
    }
  /** A step of the ground raises or sinks other shafts than the weave says. */
  | {
      /** Which slip it is. */
      readonly slip: "tie";
      /** The step of the ground, from 1. */
      readonly step: number;
      /** What it raises; left out where that is right. */
      readonly raises?: Tied;
      /** What it sinks; left out where that is right. */
      readonly sinks?: Tied;
    }
  /** Steps of the ground are exchanged. */
  | {
      /** Which slip it is. */
      readonly slip: "steps-exchanged";
      /** The steps, from 1. */
      readonly steps: readonly number[];
    }
  /** An end of the ground threading is on another shaft than the order of the others says. */
  | {
      /** Which slip it is. */
      readonly slip: "ground-end";
      /** The end of the ground threading, from 1. */
      readonly end: number;
      /** The shaft, from 1. */
      readonly shaft: number;
      /** What it should be by the rest. */
      readonly says: number;
    };

/** Shafts that a step moves, and those that the weave says. */
interface Tied {
  /** The shafts that it moves. */
  readonly was: ShaftSet;
  /** What it should be by the rest. */
  readonly says: ShaftSet;
}

/** What a likeness of a plan is of: the threading or the lifts, whole or as they are written. */
interface OfPlan {
  /** The plan that it is a likeness of. */
  readonly of: "threading" | "lifts";
  /** That it is of the plan as it is written, where that is not as it is woven or threaded. */
  readonly written?: true;
}

/** First and last of a stretch of units or rows, from 1. */
type Stretch = readonly [first: number, last: number];

/** Why something is taken for a slip, as data: but for it, what is told in few words. */
export type SlipReason =
  /** The plan reads the same from both ends. */
  | ({
      /** Which reason it is. */
      readonly reason: "mirror";
    } & OfPlan)
  /** The plan repeats every so many units or rows. */
  | ({
      /** Which reason it is. */
      readonly reason: "repeat";
      /** Units or rows of a repeat. */
      readonly by: number;
    } & OfPlan)
  /** A stretch goes straight. */
  | ({
      /** Which reason it is. */
      readonly reason: "run";
      /** First and last unit or row of the stretch, from 1. */
      readonly stretch: Stretch;
    } & OfPlan)
  /** A stretch is another once more. */
  | ({
      /** Which reason it is. */
      readonly reason: "copy";
      /** First and last unit or row of the stretch, from 1. */
      readonly stretch: Stretch;
      /** First and last of the stretch that it is like, from 1. */
      readonly other: Stretch;
    } & OfPlan)
  /** A stretch is another read backwards, or itself. */
  | ({
      /** Which reason it is. */
      readonly reason: "turned";
      /** First and last unit or row of the stretch, from 1. */
      readonly stretch: Stretch;
      /** First and last of the stretch that it is like, from 1. */
      readonly other: Stretch;
    } & OfPlan)
  /** The plan is told in fewer words. */
  | ({
      /** Which reason it is. */
      readonly reason: "shorter";
    } & OfPlan)
  /** The ground threading goes on by one shaft from end to end. */
  | {
      /** Which reason it is. */
      readonly reason: "ground-goes-on";
    }
  /** The picks of the rows are told in one number or mirror. */
  | {
      /** Which reason it is. */
      readonly reason: "even-picks";
    }
  /** A selvedge goes by an order. */
  | {
      /** Which reason it is. */
      readonly reason: "selvedge-order";
      /** The side of the cloth. */
      readonly side: "left" | "right";
      /** The order that it goes by. */
      readonly by: SelvedgeOrder;
    }
  /** Begun otherwise, every border of the figure cuts, or more of them. */
  | {
      /** Which reason it is. */
      readonly reason: "cuts";
      /** Whether every border of the figure then cuts, or only more of them. */
      readonly all: boolean;
    }
  /** No other square stands so. */
  | {
      /** Which reason it is. */
      readonly reason: "stands-alone";
    }
  /** The ground is a weave that is told in few words. */
  | {
      /** Which reason it is. */
      readonly reason: "weave";
    }
  /** A shaft draws nothing: it stands for static units, or no unit hangs on it. */
  | {
      /** Which reason it is. */
      readonly reason: "draws-nothing";
      /** What hangs on the shaft: static units, or nothing. */
      readonly hangs: "static" | "nothing";
    }
  /** The number is worked out from the rest of the recipe. */
  | {
      /** Which reason it is. */
      readonly reason: "worked-out";
      /** The mistake that would explain what is stated exactly. */
      readonly likely?: Mistake;
    };
