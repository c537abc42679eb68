import type { RuleName } from "./finding.js";
import { carriedWeft, carriedWeftPage } from "./rules/carried-weft.js";
import { closeSett, closeSettPage } from "./rules/close-sett.js";
import { cutStripe, cutStripePage } from "./rules/cut-stripe.js";
import { edgeFloat, edgeFloatPage } from "./rules/edge-float.js";
import { endWithoutShaft, endWithoutShaftPage } from "./rules/end-without-shaft.js";
import { faceShare, faceSharePage } from "./rules/face-share.js";
import { floatLength, floatLengthPage } from "./rules/float-length.js";
import { groundStart, groundStartPage } from "./rules/ground-start.js";
import { idleShaft, idleShaftPage } from "./rules/idle-shaft.js";
import { impossibleNumber, impossibleNumberPage } from "./rules/impossible-number.js";
import { largeArea, largeAreaPage } from "./rules/large-area.js";
import { layers, layersPage } from "./rules/layers.js";
import { lengthRows, lengthRowsPage } from "./rules/length-rows.js";
import { longStretch, longStretchPage } from "./rules/long-stretch.js";
import { loomCapacity, loomCapacityPage } from "./rules/loom-capacity.js";
import { looseThread, looseThreadPage } from "./rules/loose-thread.js";
import { openCut, openCutPage } from "./rules/open-cut.js";
import { openSett, openSettPage } from "./rules/open-sett.js";
import { pickWithoutShed, pickWithoutShedPage } from "./rules/pick-without-shed.js";
import { reedWidth, reedWidthPage } from "./rules/reed-width.js";
import { rowsOver, rowsOverPage } from "./rules/rows-over.js";
import type { RulePage } from "./rules/rule.js";
import { scrambledBorder, scrambledBorderPage } from "./rules/scrambled-border.js";
import { shortStock, shortStockPage } from "./rules/short-stock.js";
import { shortWarp, shortWarpPage } from "./rules/short-warp.js";
import { sleySett, sleySettPage } from "./rules/sley-sett.js";
import { statedNumber, statedNumberPage } from "./rules/stated-number.js";
import { staticDrawn, staticDrawnPage } from "./rules/static-drawn.js";
import { thinArea, thinAreaPage } from "./rules/thin-area.js";
import { treadleWithoutTie, treadleWithoutTiePage } from "./rules/treadle-without-tie.js";
import { unevenTakeUp, unevenTakeUpPage } from "./rules/uneven-take-up.js";
import { unknownShaft, unknownShaftPage } from "./rules/unknown-shaft.js";
import { unlikeSides, unlikeSidesPage } from "./rules/unlike-sides.js";
import { unusedWaiver, unusedWaiverPage } from "./rules/unused-waiver.js";
import { unusualNumber, unusualNumberPage } from "./rules/unusual-number.js";
import { widthUnits, widthUnitsPage } from "./rules/width-units.js";

/** What there is to say of every rule, by its name: what it finds, what that means, why it matters, how to mend it, examples. */
export const rulePages: { readonly [name in RuleName]: RulePage } = {
  [endWithoutShaft.name]: endWithoutShaftPage,
  [pickWithoutShed.name]: pickWithoutShedPage,
  [treadleWithoutTie.name]: treadleWithoutTiePage,
  [layers.name]: layersPage,
  [looseThread.name]: looseThreadPage,
  [floatLength.name]: floatLengthPage,
  [edgeFloat.name]: edgeFloatPage,
  [openCut.name]: openCutPage,
  [unknownShaft.name]: unknownShaftPage,
  [staticDrawn.name]: staticDrawnPage,
  [idleShaft.name]: idleShaftPage,
  [loomCapacity.name]: loomCapacityPage,
  [statedNumber.name]: statedNumberPage,
  [impossibleNumber.name]: impossibleNumberPage,
  [unusualNumber.name]: unusualNumberPage,
  [lengthRows.name]: lengthRowsPage,
  [groundStart.name]: groundStartPage,
  [rowsOver.name]: rowsOverPage,
  [widthUnits.name]: widthUnitsPage,
  [closeSett.name]: closeSettPage,
  [openSett.name]: openSettPage,
  [sleySett.name]: sleySettPage,
  [reedWidth.name]: reedWidthPage,
  [shortWarp.name]: shortWarpPage,
  [shortStock.name]: shortStockPage,
  [scrambledBorder.name]: scrambledBorderPage,
  [unevenTakeUp.name]: unevenTakeUpPage,
  [faceShare.name]: faceSharePage,
  [longStretch.name]: longStretchPage,
  [largeArea.name]: largeAreaPage,
  [thinArea.name]: thinAreaPage,
  [unlikeSides.name]: unlikeSidesPage,
  [carriedWeft.name]: carriedWeftPage,
  [cutStripe.name]: cutStripePage,
  [unusedWaiver.name]: unusedWaiverPage,
};
