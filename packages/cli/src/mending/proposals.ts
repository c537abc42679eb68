import { type MendOptions, mend, type SearchBounds } from "@drawcord/causes";
import {
  composedEdits,
  placesOf,
  type Recipe,
  recipeOfPiece,
  reviseDraft,
  soundRecipe,
  type TextEdit,
} from "@drawcord/files";
import { optionsOf, writtenLines, writtenRows, writtenUnits } from "@drawcord/review";
import { sayChange } from "@drawcord/units";
import type { Proposal } from "./proposal.js";

/**
 * The mends of a recipe, piece by piece, each upon those before it.
 * @param known what was found in a recipe of one piece, where that is known
 */
export function proposals(
  recipe: Recipe,
  search: SearchBounds = {},
  known: Pick<MendOptions, "report" | "causes"> = {},
): readonly Proposal[] {
  const { file, pieces } = recipe;
  let text = recipe.text;
  /** What led to the text in which the mends of all pieces before are made. */
  let edits: readonly TextEdit[] = [];
  const made: Proposal[] = [];
  for (const { name } of pieces) {
    const read = edits.length === 0 ? recipe : soundRecipe(text, file);
    const piece = recipeOfPiece(read, name) ?? read;
    const places = placesOf(piece);
    const mends = mend(piece.draft, optionsOf(piece), {
      ...search,
      ...known,
      written: writtenRows(piece.draft, places),
      lines: writtenLines(places),
      writtenUnits: writtenUnits(piece.draft, places),
    });
    const upon = { text, edits };
    for (const { changes, draft: mended, rules, squares } of mends) {
      const revised = reviseDraft(upon.text, file, mended, name);
      text = revised.text;
      edits = composedEdits(recipe.text, file, upon.edits, revised.edits);
      const words = changes.map((change) => sayChange(change)).join("; ");
      made.push({
        rules,
        changes,
        ...(squares !== undefined && { squares }),
        ...(pieces.length > 1 && { piece: name }),
        words: pieces.length > 1 ? `in ${name}: ${words}` : words,
        edits,
      });
    }
  }
  return made;
}
