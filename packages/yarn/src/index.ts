export { type CommonYarn, commonYarns } from "./count/common-yarns.js";
export { type Fibre, type FibreName, fibres } from "./count/fibres.js";
export { parseCountSystem, parseYarn } from "./count/parse.js";
export { printYarn } from "./count/print.js";
export { type CountSystem, type CountSystemId, countSystems } from "./count/systems.js";
export { countIn, massOf, type PlyOptions, plied, tex, weighed, type YarnInput } from "./count/tex.js";
export type { Yarn } from "./count/yarn.js";
export { YarnError, type YarnErrorCode } from "./error.js";
export { calculate, formulaOf, isResult, type Values } from "./formula/calculate.js";
export {
  type Explanation,
  explain,
  rounded,
  steps,
  type Working,
  type WorkingValue,
} from "./formula/explain.js";
export { imperial } from "./formula/imperial.js";
export { inUnits, metric, type UnitSystem } from "./formula/in-units.js";
export type { Given, Input } from "./formula/input.js";
export { type OwnFormula, type OwnSymbol, parseFormula, workOutOwn } from "./formula/own.js";
export { setTree, type TreeSetting } from "./formula/set-tree.js";
export type { FormulaTree } from "./formula/tree.js";
export type { Formula, FormulaSet, ReadFormula, ResultSpec, SymbolSpec } from "./formula/types.js";
export type { Result } from "./formula/work-out.js";
export { formulas } from "./formulas/registry.js";
export type { FormulaId } from "./formulas/typed.js";
export { type ChangedNumber, changeSett, type SettChangeOptions } from "./project/compare.js";
export { type Assumption, assumptions, type PlanNumber, planNumbers } from "./project/numbers.js";
export { type PieceLength, picksOfPiece } from "./project/piece-picks.js";
export { plan } from "./project/plan.js";
export { withSample } from "./project/sample.js";
export type {
  Measured,
  Moved,
  OwnNumber,
  Plan,
  PlanFirmness,
  PlanPiece,
  PlanPurchase,
  PlanReed,
  PlanSample,
  PlanYarn,
  Project,
  ProjectPiece,
  ProjectWarp,
  ProjectWeft,
  ProjectYarn,
  SampleNumber,
} from "./project/types.js";
export { WASHING_CAUTION } from "./project/washing-caution.js";
export { type EndsForWidth, endsForWidth, type WidthLosses } from "./project/width.js";
export { convert, toMetric } from "./quantity/convert.js";
export { parseQuantity, type QuantityParseOptions } from "./quantity/parse.js";
export { printQuantity, type QuantityPrintOptions } from "./quantity/print.js";
export { type Kind, kinds, type Quantity, quantity, type UnitName } from "./quantity/units.js";
export { parseReed, printReed, type Reed } from "./reed/notation.js";
export { parseSley, printSley, type Sley } from "./reed/sley.js";
export {
  type DentsUsed,
  dentsOf,
  dentsUsed,
  endsInDents,
  printDents,
  type Sleying,
  type SleyingOptions,
  settInReed,
  sleyings,
  spread,
} from "./reed/sleying.js";
export { type ReedSystem, type ReedSystemId, reedSystems } from "./reed/systems.js";
export { type YarnCard, type YarnCardOptions, yarnCard } from "./sett/card.js";
export {
  diameterByPacking,
  diameterByPeirce,
  diametersByRoot,
  type PackingOptions,
  type RootOptions,
  wraps,
} from "./sett/diameter.js";
export { type Firmness, firmness } from "./sett/firmness.js";
export { type Drawdown, type Interlacing, interlacing, type WeaveInterlacing } from "./sett/interlacing.js";
export {
  type BrierleyOptions,
  coverFactor,
  firmnessInWords,
  settByBrierley,
  settByRoot,
  settInAnotherWeave,
  settInAnotherYarn,
  settOfWraps,
  shareOfClosest,
} from "./sett/sett.js";
export { usualWeaves } from "./sett/weaves.js";
export { chains, type Warping, type WarpingOptions } from "./warping/chains.js";
