import type { RuleName, SlipOf } from "@drawcord/check";
import type { Change } from "@drawcord/units";
import type { Slip, SlipReason } from "../slip.js";

/** What may have been written wrong, to be proved. */
export interface Suspect {
  /** The edit that sets it right. */
  readonly changes: readonly Change[];
  /** What was written, and what it should be, as data. */
  readonly slip: Slip;
  /** Why it is taken for a slip, as data. */
  readonly reason: SlipReason;
  /** Bits of the telling that it saves; 0 where only findings speak for it. */
  readonly gain: number;
  readonly sure: boolean;
  /** Whether it is never sure, though the cloth tells it from its rivals; default: it may be. */
  readonly doubted?: boolean;
  /** Whether it is a note whatever it explains: what only the eye speaks for. */
  readonly onlyNoted?: boolean;
  /** Where the telling does not speak for it: what the slip is made in, so that only rules speak for it that say so; default: all. */
  readonly slipOf?: SlipOf;
  /** The only rule whose findings speak for it; default: all. */
  readonly rule?: RuleName;
  /** Other edits that would do nearly as well. */
  readonly rivals: readonly (readonly Change[])[];
  /** What each of the rivals says was written, in their order; default: as this one. */
  readonly told?: readonly Pick<Suspect, "slip" | "reason">[];
}
