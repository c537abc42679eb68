import { many } from "@drawcord/base";
import type { Recipe } from "@drawcord/files";
import { checkRecipe } from "./check-recipe.js";

/**
 * What must be said before a recipe is woven: that the checker finds errors in it. With errors it is followed all the same,
 * but not unwarned.
 * @param recipe a recipe as `soundRecipe` gives it
 * @returns the options of `followPlan`: a caution, or nothing where there are no errors
 * @throws {FileError} as `checkRecipe`
 * @example cautionOf(recipe) // {}
 */
export function cautionOf(recipe: Recipe): {
  /** What the page is to say before all else. */
  readonly caution?: string;
} {
  const { error } = checkRecipe(recipe, { causes: false }).summary;
  if (error === 0) return {};
  return {
    caution: `The checker finds ${many(error, "error")} in this recipe: look at them before you weave.`,
  };
}
