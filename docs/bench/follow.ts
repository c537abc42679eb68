import type { Recipe } from "@drawcord/files";
import { followPage, followPlan } from "@drawcord/follow";
import { cautionOf } from "@drawcord/review";

/**
 * The page to weave a recipe by, as the command writes it.
 * @param recipe a sound recipe
 */
export function loomPage(recipe: Recipe): string {
  return followPage(followPlan(recipe, cautionOf(recipe)));
}
