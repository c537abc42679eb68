import type { Recipe } from "../types.js";

/**
 * A recipe of one of its pieces alone, as if nothing else were woven on its warp.
 * @param recipe a recipe that was read
 * @param name the name of the piece
 * @returns undefined where no piece has this name
 * @example recipeOfPiece(soundRecipe(text, "least"), "moths") // undefined
 */
export function recipeOfPiece(recipe: Recipe, name: string): Recipe | undefined {
  const piece = recipe.pieces.find((one) => one.name === name);
  return piece && { ...recipe, pieces: [piece], draft: piece.draft, limits: piece.limits };
}
