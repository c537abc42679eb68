import type { Mend } from "@drawcord/causes";
import type { Finding } from "@drawcord/check";
import type { TextEdit } from "@drawcord/files";

/** A mend that is proposed. Plain data. */
export interface Proposal extends Pick<Mend, "rules" | "changes" | "squares"> {
  /** The piece, where the recipe has several; rows count from its first. */
  readonly piece?: string;
  /** What to do, as a clause. */
  readonly words: string;
  /** What brings the recipe's text to the one in which this mend, and those proposed before it, are made. */
  readonly edits: readonly TextEdit[];
}

/** The number (from 1) of the mend after which a finding is gone; undefined where none is proposed, or it is accepted. */
export function mendNumber(mends: readonly Proposal[] = [], { rule, waived }: Finding): number | undefined {
  const at = waived === undefined ? mends.findIndex(({ rules }) => rules.includes(rule)) : -1;
  return at < 0 ? undefined : at + 1;
}

/** What a mend asks for; one that stands upon others says so. */
export function mendWords(mends: readonly Proposal[] = [], finding: Finding): string | undefined {
  const number = mendNumber(mends, finding);
  if (number === undefined) return undefined;
  const { words } = mends[number - 1]!;
  return number === 1
    ? words
    : `${words} (after what is proposed for ${mends[number - 2]!.rules[0] ?? "a slip"})`;
}
