import type { CountSystemId } from "./systems.js";

/** A yarn by its count, as it was written. */
export interface Yarn {
  /** The system that it is counted in. */
  readonly system: CountSystemId;
  /** Count of one single, or of the whole yarn where `resultant`. */
  readonly count: number;
  /** How many singles are twisted together; 1 for a single. */
  readonly plies: number;
  /** The count is that of the plied yarn, as in `R 40 tex / 2` and `60/2 spun silk`. */
  readonly resultant: boolean;
}
