import { bareRecipe, smallDraft } from "./recipes.js";

/** What docstring examples may name besides what is exported: a small recipe. */
export const scope = { recipe: bareRecipe(smallDraft) };
