import type { ShaftSet } from "@drawcord/ground";

/** One change to a recipe or its draft, as data. Units, rows, steps, ends and shafts count from 1. */
export type Change =
  /** A unit hung on other shafts; none makes it static. */
  | {
      /** Which change it is. */
      readonly change: "thread";
      /** The unit, from 1. */
      readonly unit: number;
      /** The pattern shafts that it is to hang on; none for a static unit. */
      readonly shafts: ShaftSet;
    }
  /** A unit put in *at* that number, as wide as the one that stood there (or, at the end, as the last). */
  | {
      /** Which change it is. */
      readonly change: "insert-unit";
      /** The number that the new unit gets, from 1. */
      readonly unit: number;
      /** The pattern shafts that it hangs on; none for a static unit. */
      readonly shafts: ShaftSet;
    }
  /** A unit taken out of the threading. */
  | {
      /** Which change it is. */
      readonly change: "remove-unit";
      /** The unit, from 1. */
      readonly unit: number;
    }
  /** Two units hung each as the other; their ends stay as many as they are. */
  | {
      /** Which change it is. */
      readonly change: "swap-units";
      /** The two units, from 1. */
      readonly units: readonly [number, number];
    }
  /** The lift of a row written anew. */
  | {
      /** Which change it is. */
      readonly change: "lift";
      /** The row, from 1. */
      readonly row: number;
      /** The pattern shafts that it is to draw; none for an empty row. */
      readonly shafts: ShaftSet;
    }
  /** Shafts drawn in a row that left them down. */
  | {
      /** Which change it is. */
      readonly change: "draw";
      /** The row, from 1. */
      readonly row: number;
      /** The pattern shafts that are drawn besides. */
      readonly shafts: ShaftSet;
    }
  /** Shafts left down in a row that drew them. */
  | {
      /** Which change it is. */
      readonly change: "leave";
      /** The row, from 1. */
      readonly row: number;
      /** The pattern shafts that are left down. */
      readonly shafts: ShaftSet;
    }
  /** A row put in *at* that number, held for as many picks as the one that stood there (or, at the end, as the last). */
  | {
      /** Which change it is. */
      readonly change: "insert-row";
      /** The number that the new row gets, from 1. */
      readonly row: number;
      /** The pattern shafts that it draws; none for an empty row. */
      readonly shafts: ShaftSet;
    }
  /** A row taken out of the lift plan. */
  | {
      /** Which change it is. */
      readonly change: "remove-row";
      /** The row, from 1. */
      readonly row: number;
    }
  /** Two rows that draw each what the other drew; their picks stay as many as they are. */
  | {
      /** Which change it is. */
      readonly change: "swap-rows";
      /** The two rows, from 1. */
      readonly rows: readonly [number, number];
    }
  /** In the rows from the first to the last, every shaft so many numbers higher (or lower). */
  | {
      /** Which change it is. */
      readonly change: "shift";
      /** The first and the last row, from 1. */
      readonly rows: readonly [number, number];
      /** By how many numbers, below 0 for lower ones. */
      readonly by: number;
    }
  /** A row held for another number of picks. */
  | {
      /** Which change it is. */
      readonly change: "row-picks";
      /** The row, from 1. */
      readonly row: number;
      /** Its picks, from 1. */
      readonly picks: number;
    }
  /** What one step of the ground's treadling raises and sinks. */
  | {
      /** Which change it is. */
      readonly change: "tie";
      /** The step, from 1. */
      readonly step: number;
      /** The ground shafts that it raises. */
      readonly raise: ShaftSet;
      /** The ground shafts that it sinks. */
      readonly sink: ShaftSet;
    }
  /** The ground's treadling begun so many steps later, or earlier. */
  | {
      /** Which change it is. */
      readonly change: "start-ground";
      /** How many steps later it begins, below 0 for earlier. */
      readonly steps: number;
    }
  /** On every treadle, the shafts raised are sunk and the shafts sunk are raised. */
  | {
      /** Which change it is. */
      readonly change: "swap-ground";
    }
  /** An end of the ground threading's repeat hung on another ground shaft. */
  | {
      /** Which change it is. */
      readonly change: "ground-threading";
      /** The end of the repeat, from 1. */
      readonly end: number;
      /** The ground shaft, from 1. */
      readonly shaft: number;
    }
  /** The ends of a selvedge hung on these ground shafts, from left to right. */
  | {
      /** Which change it is. */
      readonly change: "selvedge";
      /** Which of the two selvedges. */
      readonly side: "left" | "right";
      /** A ground shaft an end, from the left. */
      readonly shafts: readonly number[];
    }
  /** A number of the recipe written anew, such as `stated.ends`; the draft does not change by it. */
  | {
      /** Which change it is. */
      readonly change: "number";
      /** Its place among the keys, such as `stated.ends`. */
      readonly key: string;
      /** What it is to be, as the recipe writes it. */
      readonly value: number | string;
    };
