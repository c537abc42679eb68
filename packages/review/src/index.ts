export { checkRecipe, type Review, type ReviewOptions } from "./check-recipe.js";
export { optionsOf } from "./options.js";
