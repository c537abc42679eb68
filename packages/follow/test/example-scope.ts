import { followPlan } from "../src/index.js";
import { smallRecipe } from "./recipes.js";

/** What the examples of the docstrings may name besides the exports. */
export const scope = { recipe: smallRecipe, plan: followPlan(smallRecipe) };
