import type { ShaftSet } from "@drawcord/ground";

/** One change to a recipe or its draft, as data. Units, rows, steps, ends and shafts count from 1. */
export type Change =
  /** A unit hung on other shafts; none makes it static. */
  | { readonly change: "thread"; readonly unit: number; readonly shafts: ShaftSet }
  /** A unit put in *at* that number, as wide as the one that stood there (or, at the end, as the last). */
  | { readonly change: "insert-unit"; readonly unit: number; readonly shafts: ShaftSet }
  /** A unit taken out of the threading. */
  | { readonly change: "remove-unit"; readonly unit: number }
  /** Two units hung each as the other; their ends stay as many as they are. */
  | { readonly change: "swap-units"; readonly units: readonly [number, number] }
  /** The lift of a row written anew. */
  | { readonly change: "lift"; readonly row: number; readonly shafts: ShaftSet }
  /** Shafts drawn in a row that left them down, or left down in a row that drew them. */
  | { readonly change: "draw" | "leave"; readonly row: number; readonly shafts: ShaftSet }
  /** A row put in *at* that number, held for as many picks as the one that stood there (or, at the end, as the last). */
  | { readonly change: "insert-row"; readonly row: number; readonly shafts: ShaftSet }
  /** A row taken out of the lift plan. */
  | { readonly change: "remove-row"; readonly row: number }
  /** Two rows that draw each what the other drew; their picks stay as many as they are. */
  | { readonly change: "swap-rows"; readonly rows: readonly [number, number] }
  /** In the rows from the first to the last, every shaft so many numbers higher (or lower). */
  | { readonly change: "shift"; readonly rows: readonly [number, number]; readonly by: number }
  /** A row held for another number of picks. */
  | { readonly change: "row-picks"; readonly row: number; readonly picks: number }
  /** What one step of the ground's treadling raises and sinks. */
  | { readonly change: "tie"; readonly step: number; readonly raise: ShaftSet; readonly sink: ShaftSet }
  /** The ground's treadling begun so many steps later, or earlier. */
  | { readonly change: "start-ground"; readonly steps: number }
  /** On every treadle, the shafts raised are sunk and the shafts sunk are raised. */
  | { readonly change: "swap-ground" }
  /** An end of the ground threading's repeat hung on another ground shaft. */
  | { readonly change: "ground-threading"; readonly end: number; readonly shaft: number }
  /** The ends of a selvedge hung on these ground shafts, from left to right. */
  | { readonly change: "selvedge"; readonly side: "left" | "right"; readonly shafts: readonly number[] }
  /** A number of the recipe written anew, such as `stated.ends`; the draft does not change by it. */
  | { readonly change: "number"; readonly key: string; readonly value: number | string };
