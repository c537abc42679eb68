export { DrawcordError, type ErrorData, type ErrorProblem, errorFrom, type Facts } from "./error.js";
export { nearest } from "./nearest.js";
export { ArgumentError, type ArgumentErrorCode, needKeys, needList, needText } from "./need.js";
export { notationPlace } from "./notation-place.js";
export type { Range, TextPoint } from "./range.js";
export {
  type Signal,
  StoppedError,
  type StoppedErrorCode,
  sharedSignal,
  step,
  type Watched,
} from "./watch.js";
export { listed, many, runsOf, type Sentence } from "./words.js";
