import type { Side } from "@drawcord/check";
import type { RecipeCloth } from "./recipe/types.js";

/**
 * The side from which the first pick of a shuttle is thrown: as the recipe says of its yarn, else of its weft, else of all;
 * left where it says nothing.
 * @param cloth the section `cloth` of a recipe
 * @param yarn the yarn by its name
 * @param weft the weft by its name in the ground's steps; `weft` is the ground weft
 * @example firstPickSide({ firstPickOf: { gold: "right" } }, "gold", "weft") // "right"
 */
export function firstPickSide(
  { firstPickFrom = "left", firstPickOf = {} }: Pick<RecipeCloth, "firstPickFrom" | "firstPickOf">,
  yarn: string,
  weft: string,
): Side {
  return firstPickOf[yarn] ?? firstPickOf[weft] ?? firstPickFrom;
}
