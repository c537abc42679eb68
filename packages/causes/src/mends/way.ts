import type { CheckOptions } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";

/** Changes that may mend a draft, to be proved. */
export interface Way {
  readonly changes: readonly Change[];
}

/** The ways that may make a rule pass, the likeliest and the smallest first. */
export type Ways = (draft: UnitDraft, options: CheckOptions) => readonly Way[];
