import { entryOf } from "./numbers/entry.js";
import { carriedWeft } from "./rules/carried-weft.js";
import { type closeSett, closeSettEntry } from "./rules/close-sett.js";
import { cutStripe } from "./rules/cut-stripe.js";
import { edgeFloat } from "./rules/edge-float.js";
import { endWithoutShaft } from "./rules/end-without-shaft.js";
import { faceShare } from "./rules/face-share.js";
import { floatLength } from "./rules/float-length.js";
import { groundStart } from "./rules/ground-start.js";
import { idleShaft } from "./rules/idle-shaft.js";
import { type impossibleNumber, impossibleNumberEntry } from "./rules/impossible-number.js";
import { largeArea } from "./rules/large-area.js";
import { layers } from "./rules/layers.js";
import { type lengthRows, lengthRowsEntry } from "./rules/length-rows.js";
import { longStretch } from "./rules/long-stretch.js";
import { loomCapacity } from "./rules/loom-capacity.js";
import { looseThread } from "./rules/loose-thread.js";
import { openCut } from "./rules/open-cut.js";
import { type openSett, openSettEntry } from "./rules/open-sett.js";
import { pickWithoutShed } from "./rules/pick-without-shed.js";
import { type reedWidth, reedWidthEntry } from "./rules/reed-width.js";
import { rowsOver } from "./rules/rows-over.js";
import type { AnyRule } from "./rules/rule.js";
import { scrambledBorder } from "./rules/scrambled-border.js";
import { type shortStock, shortStockEntry } from "./rules/short-stock.js";
import { type shortWarp, shortWarpEntry } from "./rules/short-warp.js";
import { type sleySett, sleySettEntry } from "./rules/sley-sett.js";
import { statedNumber } from "./rules/stated-number.js";
import { staticDrawn } from "./rules/static-drawn.js";
import { thinArea } from "./rules/thin-area.js";
import { treadleWithoutTie } from "./rules/treadle-without-tie.js";
import { unevenTakeUp } from "./rules/uneven-take-up.js";
import { unknownShaft } from "./rules/unknown-shaft.js";
import { unlikeSides } from "./rules/unlike-sides.js";
import { unusedWaiver } from "./rules/unused-waiver.js";
import { type unusualNumber, unusualNumberEntry } from "./rules/unusual-number.js";
import { type widthUnits, widthUnitsEntry } from "./rules/width-units.js";

/** Every rule, in the order in which they look and in which findings of equal weight are told. */
export const rules = [
  endWithoutShaft,
  pickWithoutShed,
  treadleWithoutTie,
  layers,
  looseThread,
  floatLength,
  edgeFloat,
  openCut,
  unknownShaft,
  staticDrawn,
  idleShaft,
  loomCapacity,
  groundStart,
  statedNumber,
  /* @__PURE__ */ entryOf<typeof impossibleNumber>(impossibleNumberEntry),
  /* @__PURE__ */ entryOf<typeof unusualNumber>(unusualNumberEntry),
  /* @__PURE__ */ entryOf<typeof lengthRows>(lengthRowsEntry),
  rowsOver,
  /* @__PURE__ */ entryOf<typeof widthUnits>(widthUnitsEntry),
  /* @__PURE__ */ entryOf<typeof closeSett>(closeSettEntry),
  /* @__PURE__ */ entryOf<typeof openSett>(openSettEntry),
  /* @__PURE__ */ entryOf<typeof sleySett>(sleySettEntry),
  /* @__PURE__ */ entryOf<typeof reedWidth>(reedWidthEntry),
  /* @__PURE__ */ entryOf<typeof shortWarp>(shortWarpEntry),
  /* @__PURE__ */ entryOf<typeof shortStock>(shortStockEntry),
  scrambledBorder,
  unevenTakeUp,
  faceShare,
  longStretch,
  largeArea,
  thinArea,
  unlikeSides,
  carriedWeft,
  cutStripe,
  unusedWaiver,
] as const satisfies readonly AnyRule[];
