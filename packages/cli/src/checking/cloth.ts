import type { Range } from "@drawcord/base";
import type { Report } from "@drawcord/check";
import type { TextEdit } from "@drawcord/files";
import type { BitGrid } from "@drawcord/grid";
import type { PlacedCause, Review } from "@drawcord/review";
import type { Change } from "@drawcord/units";
import type { Proposal } from "../mending/proposal.js";

/** What there is to say of one cloth. */
export interface CheckedCloth {
  /** The name the file was asked for by. */
  readonly file: string;
  readonly title: string | undefined;
  readonly report: Report & Pick<Review, "pieces">;
  /** Where in the file each finding can be mended, in the order of `report.findings`; null where no place is known. */
  readonly places: readonly (Range | null)[];
  /** What was written wrong, the first to be looked at before all others. */
  readonly causes: readonly PlacedCause[];
  /** What of the search for causes was not tried, as clauses. */
  readonly untried: readonly string[];
  /** The mends that are proposed, each upon those before it; left out where none were asked for. */
  readonly mends?: readonly Proposal[];
  /** The drawdown, worked out when a finding needs its picture. */
  readonly drawdown: () => BitGrid;
  /** The drawdown with changes made to the draft. */
  readonly changed: (changes: readonly Change[], piece?: string) => BitGrid;
  /** What makes changes in the text of the file; none where they cannot be written there. */
  readonly edits: (changes: readonly Change[], piece?: string) => readonly TextEdit[];
}

/** A file that could not be used, and all the reasons, one or more. */
export interface Failure {
  readonly file: string;
  readonly reasons: readonly Reason[];
}

/** Why a file could not be used. */
export interface Reason {
  /** The whole sentence, the file's name and place in front. */
  readonly message: string;
  /** The code of the error, where it bears one. */
  readonly code?: string;
  /** Where in the file the trouble is, when it is in the text. */
  readonly place?: Omit<Range, "file">;
}
