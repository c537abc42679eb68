import { needKeys } from "@drawcord/base";
import type { Recipe } from "./types.js";

/**
 * Refuses what is no recipe as `readRecipe` gives it.
 * @param recipe what may be one
 * @throws {ArgumentError} `wrong-argument`
 * @example needRecipe({}) // throws wrong-argument
 */
export function needRecipe(recipe: unknown): asserts recipe is Recipe {
  needKeys(recipe, "a recipe", { file: "text", text: "text", pieces: "list", draft: "object" });
}
