import type { Recipe } from "../types.js";

/** The names of the yarns that a thread of a recipe is of, and those that its ground names wefts by. */
export function yarnsUsed({ pieces, warp }: Recipe): ReadonlySet<string> {
  const used = new Set([...warp, ...pieces.flatMap(({ wefts }) => wefts)]);
  for (const { draft } of pieces) for (const { weft = "weft" } of draft.ground.steps) used.add(weft);
  return used;
}

/** A recipe without the yarns that no thread of it is of, and without what is said of them. */
export function withYarnsUsed(recipe: Recipe): Recipe {
  const { firstPickOf, ...cloth } = recipe.cloth;
  const used = yarnsUsed(recipe);
  const sides = Object.entries(firstPickOf ?? {}).filter(([name]) => used.has(name));
  return {
    ...recipe,
    yarns: recipe.yarns.filter(({ name }) => used.has(name)),
    cloth: { ...cloth, ...(sides.length > 0 && { firstPickOf: Object.fromEntries(sides) }) },
  };
}
