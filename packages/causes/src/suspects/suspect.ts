import type { Change } from "@drawcord/units";

/** What may have been written wrong, to be proved. */
export interface Suspect {
  /** The edit that sets it right. */
  readonly changes: readonly Change[];
  /** What was written, and what it should be. */
  readonly message: string;
  /** Why, in one sentence. */
  readonly why: string;
  /** Bits of the telling that it saves; 0 where only findings speak for it. */
  readonly gain: number;
  readonly sure: boolean;
  /** The rules whose findings alone may speak for it, where the telling does not; default: all. */
  readonly speaks?: readonly string[];
  /** Other edits that would do nearly as well. */
  readonly rivals: readonly (readonly Change[])[];
}
