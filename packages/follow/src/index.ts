export { FollowError, type FollowErrorCode } from "./error.js";
export { followPage } from "./page/page.js";
export type { Kept, KeptReading } from "./place/kept.js";
export { type LogEntry, logged, type Mark } from "./place/log.js";
export {
  back,
  backRow,
  forward,
  forwardRow,
  type Place,
  type Turn,
  takeOut,
  turnsOf,
} from "./place/place.js";
export { type Step, stepAt } from "./place/step.js";
export { inWords } from "./place/words.js";
export { type FollowOptions, followPlan } from "./plan/plan.js";
export type {
  FollowBlock,
  FollowLift,
  FollowPiece,
  FollowPlan,
  FollowTreadle,
  FollowWeft,
} from "./plan/types.js";
