export { blocksTogether, type NamedLifts } from "./blocks-together.js";
export { bodyLines } from "./body-lines.js";
export { type Border, borderedLifts } from "./bordered-lifts.js";
export { applyChange, applyChanges } from "./change/apply.js";
export type { Change } from "./change/change.js";
export { type ChangeSentences, changeSentences, sayChange, sayEdit } from "./change/say.js";
export { chartOf, type HarnessPlan } from "./chart.js";
export { checkDraft, type DraftSize, draftSize, MOST_INTERLACEMENTS, MOST_THREADS } from "./draft-check.js";
export { UnitsError, type UnitsErrorCode } from "./error.js";
export { expand, expandEnds } from "./expand.js";
export { expansionFromData } from "./expansion-data.js";
export { type FilledOrder, filledOrder } from "./filled-order.js";
export { type HandleOrder, handleOrder, renumberedShafts } from "./handle-order.js";
export { heavyLift, liftCaution, SHORT_LIFT_CAUTION, WEIGHT_CAUTION } from "./lift-caution.js";
export { changedLifts, changedRows, type LiftChange } from "./lift-change.js";
export { type LiftsOptions, parseLifts, printLifts } from "./lift-notation.js";
export { type LiftPlace, liftPlaces } from "./lift-places.js";
export {
  alternatingLifts,
  brickLifts,
  exchangedLifts,
  type Frame,
  fittedLifts,
  framedLifts,
  halfDropLifts,
  mirroredLifts,
  placedLifts,
  repeatedLifts,
  turnedLifts,
  upsideDownLifts,
} from "./lift-variation.js";
export {
  handleChanges,
  type LiftWork,
  type LiftWorkOptions,
  liftWork,
  type RowWork,
} from "./lift-work.js";
export { type ThreadingGroup, type ThreadingListOptions, threadingList } from "./loom-lists.js";
export { type LoomNeeds, loomNeeds, type ShaftLoad } from "./loom-needs.js";
export { gridFromLifts, liftsFromGrid } from "./picture.js";
export { parseRows, parseShafts, printShafts, type RowsOptions } from "./row-notation.js";
export { type BlockRow, type WovenRow, wovenRows } from "./row-origins.js";
export { type ShaftUse, shaftUses } from "./shaft-uses.js";
export { commonSize, endsOfEachUnit, picksOfEachRow, type SizedDraft, sized } from "./sizes.js";
export { bordersOf, type ThreadedBorders } from "./threading-borders.js";
export { parseThreading, type ThreadingOptions, threadingColumns } from "./threading-notation.js";
export {
  borderedThreading,
  brokenThreading,
  mirroredThreading,
  pointThreading,
  repeatedThreading,
  singleUnitThreading,
  staticThreading,
  straightThreading,
  threadingAlsoOn,
} from "./threading-orders.js";
export { threadingParts } from "./threading-parts.js";
export { printThreading } from "./threading-print.js";
export { mendThreading, type ThreadingShape, threadingShape } from "./threading-shape.js";
export { describeThreading, type ThreadingPoint, threadingPoints } from "./threading-words.js";
export type { Expansion, UnitDraft, UnitShafts } from "./types.js";
export { WARP_CAUTION } from "./warp-caution.js";
export { wovenLifts } from "./weaving-order.js";
export {
  blocksNamed,
  type ChangedBlock,
  parseWovenBlock,
  printWovenBlock,
  type WovenBlock,
} from "./woven-block.js";
