/** All that the page knows of a recipe: plain data, small enough to stand in the page as text. */
import type { ShaftSet } from "@drawcord/ground";

/** What one treadle does to the ground harness. */
export interface FollowTreadle {
  /** The ground shafts that it raises, from 1. */
  readonly raise: ShaftSet;
  /** The ground shafts that it sinks, from 1. */
  readonly sink: ShaftSet;
}

/** A weft as the page names it. */
export interface FollowWeft {
  /** What it is called. */
  readonly name: string;
  /** One letter or two that tell it from the others where colour does not. */
  readonly letter: string;
  /** As `#rrggbb`, where the recipe gives a colour by its code or by a name that is known. */
  readonly colour?: string;
}

/** Rows that follow one another and bear the name of their block, woven once. */
export interface FollowBlock {
  /** What it is called. */
  readonly name: string;
  /** The first row, from 0. */
  readonly start: number;
  /** Its rows. */
  readonly rows: number;
  /** Which of `times` repeats this is, from 1. */
  readonly time: number;
  /** How often it is woven. */
  readonly times: number;
}

/** A lift, what it draws and what hangs on it. */
export interface FollowLift {
  /** The handles drawn. */
  readonly handles: ShaftSet;
  /** How many units they draw up. */
  readonly units: number;
  /** The weight of their lingos in grams; none where the weight of a lingo is not known. */
  readonly grams?: number;
}

/** A piece as it is woven. */
export interface FollowPiece {
  /** The name, empty where the recipe gives none. */
  readonly name: string;
  /** How many are woven, one after the other. */
  readonly count: number;
  /** The lifts unlike each other. */
  readonly lifts: readonly FollowLift[];
  /** The lift of each row, from 0; row 1 is woven first. */
  readonly rows: readonly number[];
  /** Picks in each row. */
  readonly picks: readonly number[];
  /** The treadle of each pick, from 1; 0 where none is trodden and the figure alone has a say. Repeats over the picks. */
  readonly treadling: readonly number[];
  /** Which of the plan's wefts each pick is woven with, from 0. Repeats over the picks. */
  readonly thrown: readonly number[];
  /** The blocks in weaving order; rows outside all blocks are in none. */
  readonly blocks: readonly FollowBlock[];
}

/** A recipe to be followed at the loom. */
export interface FollowPlan {
  /** What the recipe is called. */
  readonly title: string;
  /** What is on the loom, in a few letters: the title, the units and the ground threading decide it. */
  readonly warp: string;
  /** What is woven on it, in a few letters: whatever changes a lift, a treadle or a pick changes it. */
  readonly cloth: string;
  /** The highest handle. */
  readonly handles: number;
  /** Whether each handle draws one unit; else it draws a pattern shaft. */
  readonly singleUnit: boolean;
  /** The pattern shafts of each unit, unit 1 first; `[]` is a static unit. */
  readonly threading: readonly ShaftSet[];
  /** What each treadle moves. */
  readonly treadles: readonly FollowTreadle[];
  /** The treadles as they hang, left to right, from 1. */
  readonly hanging: readonly number[];
  /** The wefts that are thrown. */
  readonly wefts: readonly FollowWeft[];
  /** The side from which the first pick of each weft is thrown, in every piece. */
  readonly firstFrom: readonly ("left" | "right")[];
  /** Picks in a centimetre on the loom, where the recipe gives them. */
  readonly picksPerCm?: number;
  /** Whether the recipe counts picks by the inch. */
  readonly inches: boolean;
  /** The pieces in weaving order. */
  readonly pieces: readonly FollowPiece[];
  /** What the weaver must know before she begins, said on the page until she does. */
  readonly caution?: string;
}
