import type { BitGrid } from "@drawcord/grid";
import type { ShaftUse, UnitDraft } from "@drawcord/units";
import type { YarnError } from "@drawcord/yarn";
import type { Inference } from "./measure/infer.js";
import type { Integrity } from "./measure/integrity.js";
import type { Kinds } from "./measure/kinds.js";
import type { Patches } from "./measure/patches.js";
import type { Threads } from "./measure/threads.js";
import type { Numbers } from "./numbers/project.js";
import type { OptionsOf } from "./options.js";
import type { CutTally } from "./report.js";
import type { ShaftDraft } from "./shaft-draft/types.js";

/** One system of a cloth: its threads are the rows of `grid`. */
export interface System {
  /** Threads x threads of the other system; raised where the end lies over the pick. */
  readonly grid: BitGrid;
  /** How many threads there are. */
  readonly count: number;
  /** How many threads of the other system each of them crosses. */
  readonly length: number;
  /** Threads that are woven alike. */
  readonly kinds: Kinds;
  /** Floats and intersections of each kind. */
  readonly threads: Threads;
  /** How many interlacements of each thread are raised. */
  readonly raised: Uint32Array;
  /** Whether each thread's last interlacement lies beside its first, as in a repeat. */
  readonly joined: boolean;
}

/** A shuttle: one yarn of one weft. */
export interface Shuttle {
  /** The weft, as a place in the wefts of the cloth. */
  readonly weft: number;
  /** What the weaver calls it: its yarn, or the weft where yarns are not told apart. */
  readonly name: string;
}

/** Where the squares of a cloth lie: units and rows where it has them. Places count from 0. */
export interface Squares {
  /** The square column of each end; the selvedges are columns of their own. */
  readonly ofEnd: Int32Array;
  /** The square row of each pick. */
  readonly ofPick: Int32Array;
  /** How many square columns there are. */
  readonly columns: number;
  /** How many square rows there are. */
  readonly rows: number;
}

/** Which unit each end is of (-1 in the selvedges), and which row each pick; from 0. */
export interface UnitLayout {
  /** The draft that the cloth is woven by. */
  readonly draft: UnitDraft;
  /** The unit of each end, from 0; -1 in the selvedges. */
  readonly unitOfEnd: Int32Array;
  /** The row of each pick, from 0. */
  readonly rowOfPick: Int32Array;
  /** The step of the ground's treadling of each pick, from 0. */
  readonly stepOfPick: Int32Array;
  /** Every pattern shaft that a unit hangs on or a lift draws, by its number, in ascending order. */
  readonly shafts: ReadonlyMap<number, ShaftUse>;
}

/** The drawn state of a cloth and what follows from it. */
export interface Figure {
  /** Picks x ends: 1 where the unit of the end is drawn. */
  readonly drawn: BitGrid;
  /** Rows x units: 1 where the unit is drawn; in a plain draft picks x ends. */
  readonly squares: BitGrid;
  /** The squares turned: units x rows. */
  readonly columns: BitGrid;
  /** Rows drawn alike. */
  readonly rowKinds: Kinds;
  /** Units drawn alike. */
  readonly columnKinds: Kinds;
  /** Patches of squares drawn alike. */
  readonly areas: Patches;
  /** The share of the interlacements in the units that are drawn; a selvedge, which never is, is left out as in `areas`. */
  readonly share: number;
  /** Neighbours along the picks whose drawn state differs. */
  readonly side: CutTally;
  /** Neighbours along the ends whose drawn state differs. */
  readonly across: CutTally;
}

/** A cloth with all that was measured of it: what the rules look at. */
export interface Cloth {
  /** Sett, limits and the rest that the check was asked with. */
  readonly options: OptionsOf;
  /** Rows are ends. */
  readonly warp: System;
  /** Rows are picks; its grid is the drawdown. */
  readonly weft: System;
  /** The weft of each pick, as a place in `wefts`. */
  readonly weftOfPick: Int32Array;
  /** The wefts by name; the ground weft is ``. */
  readonly wefts: readonly string[];
  /** The shuttle of each pick, as a place in `shuttles`. */
  readonly shuttleOfPick: Int32Array;
  /** One for each yarn of each weft, in the order in which they are first thrown. */
  readonly shuttles: readonly Shuttle[];
  /** Where its squares lie. */
  readonly squares: Squares;
  /** Left out for a plain draft, which has no units and rows. */
  readonly layout?: UnitLayout;
  /** Left out where nothing is known of what is drawn. */
  readonly figure?: Figure;
  /** How sure the figure of a plain draft is; left out where units and lifts tell what is drawn. */
  readonly inferred?: Omit<Inference, "drawn">;
  /** Whether it hangs together, and what does not. */
  readonly integrity: Integrity;
  /** The plain draft that the cloth is woven by; left out for any other. */
  readonly shaftDraft?: ShaftDraft;
  /** The numbers of the project, or why they cannot be; left out where nothing is said of one. */
  readonly numbers?: () => Numbers | YarnError;
}

/** A cloth whose units and rows are known, and so its figure. */
export interface LaidOut extends Cloth {
  /** Its units and rows, from 0. */
  readonly layout: UnitLayout;
  /** What is drawn, and what follows from it. */
  readonly figure: Figure;
}

/** A cloth that a plain draft is the plan of. */
export interface Drafted extends Cloth {
  readonly shaftDraft: ShaftDraft;
}

/** A cloth whose project can be worked out. */
export interface Calculated extends LaidOut, Numbers {}
