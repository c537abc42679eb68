import type { Range } from "@drawcord/base";
import type { Report } from "@drawcord/check";
import type { PlacedCause, Review } from "@drawcord/review";
import type { Proposal } from "../mending/proposal.js";

/** What is kept of a checked file: all that follows from its content and the rules asked for. */
export interface KeptCheck {
  readonly title: string | null;
  readonly report: Report & Pick<Review, "pieces">;
  readonly places: readonly (Range | null)[];
  /** What was written wrong in a recipe, and what was not tried; left out for what is no recipe. */
  readonly causes?: readonly PlacedCause[];
  readonly untried?: readonly string[];
  /** The sections of a draft that were not used. */
  readonly ignored?: readonly string[];
  /** The mends, each upon those before it; left out where none were asked for. */
  readonly mends?: readonly Proposal[];
}
