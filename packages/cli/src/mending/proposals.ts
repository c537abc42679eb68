import { mend } from "@drawcord/causes";
import type { CheckOptions } from "@drawcord/check";
import { type Recipe, reviseDraft } from "@drawcord/files";
import { sayChange, type UnitDraft } from "@drawcord/units";
import { editsBetween } from "./edits.js";
import type { Proposal } from "./proposal.js";

/** The mends of a recipe, each upon those before it. */
export function proposals(
  source: Uint8Array,
  { draft: original, file }: Recipe,
  options: CheckOptions,
): readonly Proposal[] {
  const textOf = (draft: UnitDraft) => reviseDraft(source, file, draft).text;
  const mends = mend(original, options);
  if (mends.length === 0) return [];
  const before = textOf(original);
  return mends.map(({ changes, draft, rules, squares }) => ({
    rules,
    changes,
    ...(squares !== undefined && { squares }),
    words: changes.map(sayChange).join("; "),
    edits: editsBetween(before, textOf(draft)),
  }));
}
