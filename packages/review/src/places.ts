import type { Range } from "@drawcord/base";
import { type Finding, partsOf, type RecipePart } from "@drawcord/check";
import type { Path, RecipePlaces } from "@drawcord/files";

/**
 * Where in a recipe each finding can be mended: the nearest of its parts that the recipe has; null where it has none.
 * @param piece the way to the section of the piece that is checked
 */
export function recipePlaces(
  findings: readonly Finding[],
  places: RecipePlaces,
  piece: Path,
): readonly (Range | null)[] {
  const placeOf = partPlaces(places, piece);
  return findings.map((finding) => {
    for (const part of partsOf(finding)) {
      const place = placeOf(part);
      if (place !== undefined) return place;
    }
    return null;
  });
}

/** Finds the place of a part; each is looked up in the text once. */
function partPlaces(places: RecipePlaces, piece: Path): (part: RecipePart) => Range | undefined {
  const known = new Map<string, Range | undefined>();
  return (part) => {
    if ("row" in part) return places.rows()[part.row - 1];
    if ("unit" in part) return places.units()[part.unit - 1];
    if ("piece" in part) return piece.length === 0 ? undefined : places.at([...piece, ...part.piece]);
    const key = JSON.stringify(part);
    if (!known.has(key)) known.set(key, places.at(part));
    return known.get(key);
  };
}
