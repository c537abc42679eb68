import type { Ground } from "@drawcord/ground";
import { parseYarn } from "@drawcord/yarn";
import { attempt, tell } from "../tree/problems.js";
import { unknownKey } from "../tree/shape.js";
import { at, entries, type Spot, textAt, wrong } from "../tree/spot.js";
import { placed, quantityAt } from "./notation.js";
import type { RecipeYarn } from "./types.js";

/**
 * The section `yarns`, whose shape was checked. A yarn that is neither the warp nor a weft of the ground, and that no order
 * names, is told (`unknown-key`).
 * @param used the yarns that ends and picks are of, by their names; undefined where they are not known, and any may be named
 */
export function readYarns(
  section: Spot | undefined,
  used: ReadonlySet<string> | undefined,
): readonly RecipeYarn[] {
  if (section === undefined) return [];
  const known = used && new Set(["warp", "weft", ...used]);
  return entries(section).flatMap(([name, spot]) => {
    const { problems } = spot.tree;
    if (known !== undefined && !known.has(name)) {
      const key = { ...spot, node: spot.key ?? spot.node };
      tell(problems, wrong(key, "unknown-key", unknownKey(name, [...known], section.path)));
    }
    const yarn = attempt(problems, () => yarnOf(name, spot));
    return yarn === undefined ? [] : [yarn];
  });
}

/** The names of the wefts that the steps of a ground call for. */
export function weftsOf(ground: Ground): readonly string[] {
  return [...new Set(ground.steps.flatMap(({ weft }) => (weft === undefined ? [] : [weft])))];
}

function yarnOf(name: string, yarn: Spot): RecipeYarn {
  const count = at(yarn, "count");
  const fibre = textAt(yarn, "fibre");
  const colour = textAt(yarn, "colour");
  return {
    name,
    ...(count === undefined ? {} : { count: placed(count, parseYarn) }),
    ...(fibre === undefined ? {} : { fibre }),
    ...(colour === undefined ? {} : { colour }),
    ...quantityAt(yarn, "package", "package", "mass", "length"),
    ...quantityAt(yarn, "stock", "stock", "mass", "length"),
  };
}
