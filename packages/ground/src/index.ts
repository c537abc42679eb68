export type {
  AddedPoint,
  BaseWeave,
  Break,
  Direction,
  Pair,
  PatternTies,
  WeaveDescription,
} from "./description/description.js";
export { parseWeave } from "./description/parse.js";
export { printWeave } from "./description/print.js";
export { GroundError, type GroundErrorCode } from "./error.js";
export { type Feet, feetOf } from "./loom/feet.js";
export { type SelvedgedGround, type SelvedgeOptions, withSelvedge } from "./loom/selvedge.js";
export { ACTIONS, type Action, type NoTieUp, type Tie, type TieUp, tieUpOf } from "./loom/ties.js";
export type { Arrangement } from "./plan/arrange.js";
export type { GroundPlanKind, GroundPlanOptions } from "./plan/choose.js";
export { type BorderCut, cutOf, type FigureSize, type GroundCut, isClean } from "./plan/cut.js";
export { groundFromWeave } from "./plan/from-weave.js";
export { type IrregularPair, type IrregularPrice, irregularPair, touching } from "./plan/irregular.js";
export { type GroundPlan, groundPlanOf } from "./plan/plan.js";
export { groundsOn, type PossibleGround } from "./plan/possible.js";
export { regularPair } from "./plan/regular.js";
export { type FloatLengths, floatsOf, type WeaveFloats } from "./study/floats.js";
export { backOf, counterchange, mirrored, turned } from "./study/forms.js";
export { isIsonemal } from "./study/isonemal.js";
export { lineOf, type Setts, type TwillLine, twillAngle } from "./study/line.js";
export { nameOf } from "./study/name.js";
export { type Properties, propertiesOf } from "./study/properties.js";
export { leastRepeat, type RepeatOptions, sameCloth } from "./study/repeat.js";
export type { Ground, GroundStep, ShaftSet } from "./types.js";
export { type WeaveOptions, weaveOf } from "./weave/build.js";
export {
  brokenByFourths,
  brokenByHalves,
  brokenBySkipping,
  herringbone,
  pointed,
  straight,
  undulating,
} from "./weave/orders.js";
export { type Ratio, ratioOf } from "./weave/ratio.js";
export { irregularSatins, satinOrder, satinSteps } from "./weave/satin.js";
export { shaftsOf, type TreadledWeave, treadled, untreadled } from "./weave/shafts.js";
export { type TwillsOptions, twillsOn } from "./weave/twills.js";
export { drawdownOf, type Weave } from "./weave/weave.js";
