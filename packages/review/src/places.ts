import type { Range } from "@drawcord/base";
import { type Finding, partsOf, type RecipePart } from "@drawcord/check";
import type { RecipePlaces } from "@drawcord/files";

/** Where in a recipe each finding can be mended: the nearest of its parts that the recipe has; null where it has none. */
export function recipePlaces(findings: readonly Finding[], places: RecipePlaces): readonly (Range | null)[] {
  const placeOf = partPlaces(places);
  return findings.map((finding) => {
    for (const part of partsOf(finding)) {
      const place = placeOf(part);
      if (place !== undefined) return place;
    }
    return null;
  });
}

/** Finds the place of a part; each is looked up in the text once. */
function partPlaces(places: RecipePlaces): (part: RecipePart) => Range | undefined {
  const known = new Map<string, Range | undefined>();
  return (part) => {
    if ("row" in part) return places.rows()[part.row - 1];
    if ("unit" in part) return places.units()[part.unit - 1];
    const key = JSON.stringify(part);
    if (!known.has(key)) known.set(key, places.at(part));
    return known.get(key);
  };
}
