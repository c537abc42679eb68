import { exampleRecipe } from "./recipes.js";

const recipe = exampleRecipe("runner");

/** What the examples of the docstrings may name besides the exports. */
export const scope = { recipe, draft: recipe.draft };
