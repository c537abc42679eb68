export { type Cause, type Causes, type CausesOptions, findCauses } from "./causes.js";
export { type Mend, type MendOptions, mend } from "./mend.js";
export type { SearchBounds } from "./search.js";
export {
  type CauseData,
  type CauseSentences,
  causeSentences,
  type SaidCause,
  sayCause,
} from "./sentences.js";
export type { SelvedgeOrder, Slip, SlipReason } from "./slip.js";
export type { Written } from "./suspects/written.js";
export { applyTogether } from "./together.js";
