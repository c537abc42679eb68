import { applyTogether } from "@drawcord/causes";
import { composedEdits, type Recipe, type RevisedRecipe, reviseDraft, reviseRecipe } from "@drawcord/files";
import type { Change } from "@drawcord/units";

/**
 * The text of a recipe with edits made, of its draft and of its numbers; comments and layout are kept.
 * @param recipe a sound recipe as it was read, or that of one of its pieces
 * @param changes the edits, such as the changes of a cause, by the places of the recipe as it is
 * @throws {FileError} `bad-value` for edits that cannot be written into the recipe
 * @example mendText(recipe, []).text === recipe.text // true
 */
export function mendText(
  { draft, file, pieces, text }: Pick<Recipe, "draft" | "file" | "pieces" | "text">,
  changes: readonly Change[],
): RevisedRecipe {
  const revised = reviseDraft(text, file, applyTogether(draft, changes), pieces[0]?.name);
  const numbers = changes.flatMap((change) =>
    change.change === "number" ? [{ path: change.key.split("."), value: change.value }] : [],
  );
  if (numbers.length === 0) return revised;
  const numbered = reviseRecipe(revised.text, file, numbers);
  const edits = composedEdits(text, file, revised.edits, numbered.edits);
  return { ...revised, text: numbered.text, edits };
}
