import type { Report } from "@drawcord/check";
import type { Place } from "@drawcord/files";

/** What is kept of a checked file: all that follows from its content and the rules asked for. */
export interface Kept {
  readonly title: string | null;
  readonly report: Report;
  readonly places: readonly (Place | null)[];
  /** The sections of a draft that were not used. */
  readonly ignored?: readonly string[];
}
