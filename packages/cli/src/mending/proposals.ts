import { mend, type SearchBounds } from "@drawcord/causes";
import { placesOf, type Recipe, recipeOfPiece, reviseDraft, soundRecipe } from "@drawcord/files";
import { optionsOf, writtenRows, writtenUnits } from "@drawcord/review";
import { sayChange } from "@drawcord/units";
import { editsBetween } from "./edits.js";
import type { Proposal } from "./proposal.js";

/** The mends of a recipe, piece by piece, each upon those before it. */
export function proposals(
  source: Uint8Array,
  recipe: Recipe,
  search: SearchBounds = {},
): readonly Proposal[] {
  const { draft, file, pieces } = recipe;
  const before = reviseDraft(source, file, draft).text;
  let text = before;
  const made: Proposal[] = [];
  for (const { name } of pieces) {
    const read = soundRecipe(text, file);
    const piece = recipeOfPiece(read, name) ?? read;
    const mends = mend(piece.draft, optionsOf(piece), {
      ...search,
      written: writtenRows(piece.draft, placesOf(piece)),
      writtenUnits: writtenUnits(piece.draft, placesOf(piece)),
    });
    const upon = text;
    for (const { changes, draft: mended, rules, squares } of mends) {
      text = reviseDraft(upon, file, mended, name).text;
      const words = changes.map((change) => sayChange(change)).join("; ");
      made.push({
        rules,
        changes,
        ...(squares !== undefined && { squares }),
        ...(pieces.length > 1 && { piece: name }),
        words: pieces.length > 1 ? `in ${name}: ${words}` : words,
        edits: editsBetween(before, text),
      });
    }
  }
  return made;
}
