export { FollowError, type FollowErrorCode } from "./error.js";
export { followPage } from "./page/page.js";
export type { Kept } from "./place/kept.js";
export { type LogEntry, logged, type Mark } from "./place/log.js";
export {
  back,
  backRow,
  forward,
  forwardRow,
  type Turn,
  takeOut,
  turnsOf,
  type WarpPlace,
} from "./place/place.js";
export { type PickStep, stepAt } from "./place/step.js";
export { placeInWords } from "./place/words.js";
export { type FollowOptions, followPlan } from "./plan/plan.js";
export type {
  FollowBlock,
  FollowLift,
  FollowPiece,
  FollowPlan,
  FollowTreadle,
  FollowWeft,
} from "./plan/types.js";
