import type { RuleName } from "./finding.js";
import { closeSettPage } from "./rules/close-sett.js";
import { edgeFloatPage } from "./rules/edge-float.js";
import { endWithoutShaftPage } from "./rules/end-without-shaft.js";
import { faceSharePage } from "./rules/face-share.js";
import { floatLengthPage } from "./rules/float-length.js";
import { idleShaftPage } from "./rules/idle-shaft.js";
import { impossibleNumberPage } from "./rules/impossible-number.js";
import { largeAreaPage } from "./rules/large-area.js";
import { layersPage } from "./rules/layers.js";
import { lengthRowsPage } from "./rules/length-rows.js";
import { liftSlipPage } from "./rules/lift-slip.js";
import { longStretchPage } from "./rules/long-stretch.js";
import { loomCapacityPage } from "./rules/loom-capacity.js";
import { looseThreadPage } from "./rules/loose-thread.js";
import { openCutPage } from "./rules/open-cut.js";
import { openSettPage } from "./rules/open-sett.js";
import { pickWithoutShedPage } from "./rules/pick-without-shed.js";
import { reedWidthPage } from "./rules/reed-width.js";
import { repeatedRowPage } from "./rules/repeated-row.js";
import type { RulePage } from "./rules/rule.js";
import { shortStockPage } from "./rules/short-stock.js";
import { shortWarpPage } from "./rules/short-warp.js";
import { sleySettPage } from "./rules/sley-sett.js";
import { statedNumberPage } from "./rules/stated-number.js";
import { staticDrawnPage } from "./rules/static-drawn.js";
import { thinAreaPage } from "./rules/thin-area.js";
import { threadingSlipPage } from "./rules/threading-slip.js";
import { treadleWithoutTiePage } from "./rules/treadle-without-tie.js";
import { unevenTakeUpPage } from "./rules/uneven-take-up.js";
import { unknownShaftPage } from "./rules/unknown-shaft.js";
import { unlikeSidesPage } from "./rules/unlike-sides.js";
import { unusedWaiverPage } from "./rules/unused-waiver.js";
import { unusualNumberPage } from "./rules/unusual-number.js";
import { widthUnitsPage } from "./rules/width-units.js";

/** What there is to say of every rule, by its name: what it finds, what that means, why it matters, how to mend it, examples. */
export const rulePages: { readonly [name in RuleName]: RulePage } = {
  "end-without-shaft": endWithoutShaftPage,
  "pick-without-shed": pickWithoutShedPage,
  "treadle-without-tie": treadleWithoutTiePage,
  layers: layersPage,
  "loose-thread": looseThreadPage,
  "float-length": floatLengthPage,
  "edge-float": edgeFloatPage,
  "open-cut": openCutPage,
  "unknown-shaft": unknownShaftPage,
  "static-drawn": staticDrawnPage,
  "idle-shaft": idleShaftPage,
  "loom-capacity": loomCapacityPage,
  "stated-number": statedNumberPage,
  "impossible-number": impossibleNumberPage,
  "unusual-number": unusualNumberPage,
  "length-rows": lengthRowsPage,
  "width-units": widthUnitsPage,
  "close-sett": closeSettPage,
  "open-sett": openSettPage,
  "sley-sett": sleySettPage,
  "reed-width": reedWidthPage,
  "short-warp": shortWarpPage,
  "short-stock": shortStockPage,
  "threading-slip": threadingSlipPage,
  "lift-slip": liftSlipPage,
  "repeated-row": repeatedRowPage,
  "uneven-take-up": unevenTakeUpPage,
  "face-share": faceSharePage,
  "long-stretch": longStretchPage,
  "large-area": largeAreaPage,
  "thin-area": thinAreaPage,
  "unlike-sides": unlikeSidesPage,
  "unused-waiver": unusedWaiverPage,
};
