import { areaLimit } from "./limits/area.js";
import { carriedLimit } from "./limits/carried.js";
import { closeSettLimit } from "./limits/close-sett.js";
import { faceShareLimit } from "./limits/face-share.js";
import { floatLimit } from "./limits/float.js";
import type { Limit, LimitValue } from "./limits/limit.js";
import { off } from "./limits/off.js";
import { openCutsLimit } from "./limits/open-cuts.js";
import { openSettLimit } from "./limits/open-sett.js";
import { stretchLimit } from "./limits/stretch.js";
import { takeUpLimit } from "./limits/take-up.js";
import { thinAreaLimit } from "./limits/thin-area.js";
import { unlikeSidesLimit } from "./limits/unlike-sides.js";

const listed = [
  floatLimit,
  openCutsLimit,
  takeUpLimit,
  stretchLimit,
  carriedLimit,
  areaLimit,
  faceShareLimit,
  thinAreaLimit,
  unlikeSidesLimit,
  closeSettLimit,
  openSettLimit,
  off,
] as const satisfies readonly Limit[];

/** Every limit that a weaver may set, in the order in which recipes are written. */
export const limits: readonly Limit[] = listed;

type Any = (typeof listed)[number];

/** The limits set for a whole. */
type Whole = { readonly [L in Any as L["name"]]?: LimitValue<L> };

/** Those set for a part, which then go before the whole's. */
type Apart = {
  readonly [L in Any as L extends { readonly apart: infer A } ? A[keyof A] & string : never]?: LimitValue<L>;
};

/** Those set for a weft by its name. */
type ByWeft = {
  readonly [L in Any as L extends { readonly byWeft: infer B } ? B & string : never]?: Readonly<
    Record<string, LimitValue<L>>
  >;
};

/** The limits of the list, each with what it may be set to. */
interface Listed extends Whole, Apart, ByWeft {}

/** A length along a thread: in threads that it passes, in mm, or in both (then the tighter holds). */
export interface ThreadLength {
  /** Threads of the other system, from 1. */
  readonly threads?: number;
  /** Millimetres at the sett of the cloth, more than 0. */
  readonly mm?: number;
}

/** A length along an end: in picks, in mm, or in both (then the tighter holds). */
export interface PickLength {
  /** Picks, from 1. */
  readonly picks?: number;
  /** Millimetres at the sett of the cloth, more than 0. */
  readonly mm?: number;
}

/** The size of an area: in squares, in mm, or in both (then the tighter holds). */
export interface AreaSize {
  /** Squares (units x rows), from 1. */
  readonly squares?: number;
  /** Millimetres of its longer side at the sett of the cloth, more than 0. */
  readonly mm?: number;
}

/** What the weaver allows; what is left out keeps the limit that is usual. */
export interface Limits extends Listed {
  /** The longest float; usually 6 mm, where the sett is not known 12 threads. */
  readonly float?: ThreadLength;
  /** The longest float along an end; default: `float`. */
  readonly warpFloat?: ThreadLength;
  /** The longest float along a pick; default: `float`. */
  readonly weftFloat?: ThreadLength;
  /** The longest float along a pick of a weft, by its name; default: `weftFloat`. */
  readonly floatOfWeft?: Readonly<Record<string, ThreadLength>>;
  /** The share of a border that may be open, in percent from 0 to 100; usually 0. */
  readonly openCuts?: number;
  /** How far the intersections of a thread may lie from the mean of its system, in percent; usually 15. */
  readonly takeUp?: number;
  /** How long a unit may stay drawn, or undrawn; no usual one. */
  readonly stretch?: PickLength;
  /** How large an area of one drawn state may be; no usual one. */
  readonly area?: AreaSize;
  /** How large a drawn area may be; default: `area`. */
  readonly drawnArea?: AreaSize;
  /** How large an undrawn area may be; default: `area`. */
  readonly undrawnArea?: AreaSize;
  /** How far the share of warp on the face of a band may lie from that of the cloth, in percentage points; usually 30. */
  readonly faceShare?: number;
  /** Up to how many squares an area that is one unit wide or one row high is reported; usually 3. */
  readonly thinArea?: number;
  /** How many times as long as on the other side of the cloth the longest float may be; usually 2. */
  readonly unlikeSides?: number;
  /** How close the threads may lie, in percent of their closest sett; usually 100. */
  readonly closeSett?: number;
  /** How open the threads may lie, in percent of their closest sett; usually 50. */
  readonly openSett?: number;
  /** How far two numbers that say the same may lie apart, in percent; usually 3. */
  readonly off?: number;
  /** How far a weft that rests is carried along the selvedge; usually 25 mm. */
  readonly carried?: PickLength;
}
