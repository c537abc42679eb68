/** How a cloth was put together, as its recipe writes it: what of it ends and picks alone do not show. */
import type { ShaftSet } from "@drawcord/ground";
import type { WovenBlock } from "@drawcord/units";

/** From which side a shuttle is thrown. */
export type Side = "left" | "right";

/** An order of yarns over the threads of a system, as it was written, and how many threads it lies over. */
export interface YarnOrder {
  /** Whose threads it is about. */
  readonly system: "warp" | "weft";
  /** The yarn of each thread by its name; begins again where it ends. */
  readonly yarns: readonly string[];
  /** How many threads it lies over. */
  readonly threads: number;
  /** The block whose weft it orders, beginning anew with each of its lines; left out for an order of the whole. */
  readonly block?: string;
  /** The keys and list places (from 0) that lead to it in the recipe. */
  readonly path: readonly (string | number)[];
}

/** How a lift plan was put together of blocks. */
export interface WovenOrder {
  /** Its lines, each with its number of repeats. */
  readonly order: readonly WovenBlock[];
  /** The rows of each block by its name. */
  readonly blocks: Readonly<Record<string, readonly ShaftSet[]>>;
  /** Rows that no whole repeat of the block that fills the length had room in. */
  readonly over: number;
}

/** What the first pick of a ground moves. */
export interface GroundBegin {
  /** The ground shafts that are raised. */
  readonly raise: ShaftSet;
  /** The ground shafts that are sunk. */
  readonly sink: ShaftSet;
}

/** How a ground named by its weave is begun where rows of unlike picks move its start. */
export interface GroundStart {
  /** The weave, as it is written. */
  readonly weave: string;
  /** The numbers of picks that rows have, each once, from the least. */
  readonly rowPicks: readonly number[];
  /** Its first pick. */
  readonly begins: GroundBegin;
  /** What its first pick were if all rows had the picks that most have. */
  readonly wouldBegin: GroundBegin;
}
