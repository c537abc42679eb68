import { FileError, type Recipe, recipeOfPiece, type TextEdit } from "@drawcord/files";
import { mendText } from "@drawcord/review";
import type { Change } from "@drawcord/units";

/**
 * What makes changes of a recipe in its text; none where they cannot be written there.
 * @param piece the piece that they are of, where the recipe has several
 */
export function editsOf(recipe: Recipe, changes: readonly Change[], piece?: string): readonly TextEdit[] {
  try {
    return mendText((piece !== undefined && recipeOfPiece(recipe, piece)) || recipe, changes).edits;
  } catch (error) {
    if (error instanceof FileError) return [];
    throw error;
  }
}
