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

/** Every limit that a weaver may set, in the order in which recipes are written. */
export const limits = [
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

type Any = (typeof limits)[number];

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

/** What the weaver allows; what is left out keeps the limit that is usual. */
export interface Limits extends Whole, Apart, ByWeft {}
