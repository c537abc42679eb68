import { type Finding, type Part, partsOf } from "@drawcord/check";
import type { Place, Recipe } from "@drawcord/files";

/** What of a recipe tells where something stands in it. */
type Placing = Pick<Recipe, "place" | "rowPlaces" | "unitPlaces">;

/** Where in a recipe each finding can be mended: the nearest of its parts that the recipe has; null where it has none. */
export function recipePlaces(findings: readonly Finding[], recipe: Placing): readonly (Place | null)[] {
  const placeOf = partPlaces(recipe);
  return findings.map((finding) => {
    for (const part of partsOf(finding)) {
      const place = placeOf(part);
      if (place !== undefined) return place;
    }
    return null;
  });
}

/** Finds the place of a part; each is looked up in the text once, when the first finding asks for it. */
function partPlaces(recipe: Placing): (part: Part) => Place | undefined {
  let ofRows: readonly Place[] | undefined;
  let ofUnits: readonly Place[] | undefined;
  const known = new Map<string, Place | undefined>();
  return (part) => {
    if ("row" in part) {
      ofRows ??= recipe.rowPlaces();
      return ofRows[part.row - 1];
    }
    if ("unit" in part) {
      ofUnits ??= recipe.unitPlaces();
      return ofUnits[part.unit - 1];
    }
    const key = JSON.stringify(part);
    if (!known.has(key)) known.set(key, recipe.place(part));
    return known.get(key);
  };
}
