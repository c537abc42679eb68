import { mend, type SearchBounds } from "@drawcord/causes";
import type { CheckOptions } from "@drawcord/check";
import { placesOf, type Recipe, reviseDraft } from "@drawcord/files";
import { writtenRows } from "@drawcord/review";
import { sayChange, type UnitDraft } from "@drawcord/units";
import { editsBetween } from "./edits.js";
import type { Proposal } from "./proposal.js";

/** The mends of a recipe, each upon those before it. */
export function proposals(
  source: Uint8Array,
  recipe: Recipe,
  options: CheckOptions,
  search: SearchBounds = {},
): readonly Proposal[] {
  const { draft: original, file } = recipe;
  const textOf = (draft: UnitDraft) => reviseDraft(source, file, draft).text;
  const mends = mend(original, options, {
    ...search,
    written: writtenRows(original, placesOf(recipe)),
  });
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
