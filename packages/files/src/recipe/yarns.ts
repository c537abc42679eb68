import type { Ground } from "@drawcord/ground";
import { readYarn } from "@drawcord/yarn";
import { unknownKey } from "../tree/shape.js";
import { at, entries, type Spot, textAt, wrong } from "../tree/spot.js";
import { placed, quantityAt } from "./notation.js";
import type { RecipeYarn } from "./types.js";

/**
 * The section `yarns`, whose shape was checked.
 * @param used the yarns that ends and picks are of, by their names
 * @throws {FileError} `unknown-key` for a yarn that is neither the warp nor a weft of the ground, and that no order names
 */
export function readYarns(section: Spot | undefined, used: ReadonlySet<string>): readonly RecipeYarn[] {
  if (section === undefined) return [];
  const known = new Set(["warp", "weft", ...used]);
  return entries(section).map(([name, spot]) => {
    if (!known.has(name)) {
      throw wrong(
        { ...spot, node: spot.key ?? spot.node },
        "unknown-key",
        unknownKey(name, [...known], section.path),
      );
    }
    return yarnOf(name, spot);
  });
}

/** The names of the wefts that the steps of a ground call for. */
export function weftsOf(ground: Ground): readonly string[] {
  return [...new Set(ground.steps.flatMap(({ weft }) => (weft === undefined ? [] : [weft])))];
}

function yarnOf(name: string, yarn: Spot): RecipeYarn {
  const count = at(yarn, "count")!;
  const fibre = textAt(yarn, "fibre");
  const colour = textAt(yarn, "colour");
  return {
    name,
    count: placed(count, readYarn),
    ...(fibre === undefined ? {} : { fibre }),
    ...(colour === undefined ? {} : { colour }),
    ...quantityAt(yarn, "package", "package", "mass", "length"),
    ...quantityAt(yarn, "stock", "stock", "mass", "length"),
  };
}
