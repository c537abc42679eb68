import { type Finding, type Part, partsOf } from "@drawcord/check";
import { type Place, placesOf, type Recipe } from "@drawcord/files";

/** Where in a recipe each finding can be mended: the nearest of its parts that the recipe has; null where it has none. */
export function recipePlaces(findings: readonly Finding[], recipe: Recipe): readonly (Place | null)[] {
  if (findings.length === 0) return [];
  const placeOf = partPlaces(recipe);
  return findings.map((finding) => {
    for (const part of partsOf(finding)) {
      const place = placeOf(part);
      if (place !== undefined) return place;
    }
    return null;
  });
}

/** Finds the place of a part; each path is looked up in the text once, when the first finding asks for it. */
function partPlaces(recipe: Recipe): (part: Part) => Place | undefined {
  const places = placesOf(recipe);
  const known = new Map<string, Place | undefined>();
  return (part) => {
    if ("row" in part) return places.rows()[part.row - 1];
    if ("unit" in part) return places.units()[part.unit - 1];
    const key = JSON.stringify(part);
    if (!known.has(key)) known.set(key, places.at(part));
    return known.get(key);
  };
}
