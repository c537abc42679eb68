/** The version of the recipe format that this package reads. */
export const recipeVersion = 1;
