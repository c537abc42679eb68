import { area } from "./limits/area.js";
import { closeSett } from "./limits/close-sett.js";
import { faceShare } from "./limits/face-share.js";
import { float } from "./limits/float.js";
import type { Limit, LimitValue } from "./limits/limit.js";
import { off } from "./limits/off.js";
import { openCuts } from "./limits/open-cuts.js";
import { openSett } from "./limits/open-sett.js";
import { stretch } from "./limits/stretch.js";
import { takeUp } from "./limits/take-up.js";
import { thinArea } from "./limits/thin-area.js";
import { unlikeSides } from "./limits/unlike-sides.js";

/** Every limit that a weaver may set, in the order in which recipes are written. */
export const limits = [
  float,
  openCuts,
  takeUp,
  stretch,
  area,
  faceShare,
  thinArea,
  unlikeSides,
  closeSett,
  openSett,
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
