import type { CheckOptions } from "@drawcord/check";
import type { Change, UnitDraft } from "@drawcord/units";
import type { Twin } from "./twin.js";

/** Changes that may mend a draft, to be proved. */
export interface Way {
  readonly changes: readonly Change[];
  /** Where the changes make a unit or a row as its counterpart is. */
  readonly twin?: Twin;
  /** Whether another way is likelier, so that all else is tried first; default false. */
  readonly unlikely?: boolean;
}

/** The ways that may make a rule pass, the likeliest and the smallest first. */
export type Ways = (draft: UnitDraft, options: CheckOptions) => readonly Way[];
