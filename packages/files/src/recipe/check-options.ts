import type { CheckOptions, LoomOptions, Sett } from "@drawcord/check";
import { type Quantity, toMetric } from "@drawcord/yarn/quantity";
import { statedOfCloth } from "../stated.js";
import type { Recipe } from "./types.js";

/**
 * How the checker is to look at the cloth of a recipe: its sett, limits, repeat, first pick, static shaft, loom, levels and waivers, and
 * of its stated numbers those that the cloth tells itself; `statedNumbers` has all of them.
 * @example checkOptions(readRecipe(text, "least")).sett // {}
 */
export function checkOptions(recipe: Recipe): CheckOptions {
  const { cloth, limits, levels, waive, staticShaft } = recipe;
  const sett: Sett = { ...perCm("endsPerCm", cloth.sett), ...perCm("picksPerCm", cloth.picks) };
  const stated = statedOfCloth(recipe);
  const { patternShafts, groundShafts, treadles, lingos } = recipe.loom;
  const loom: LoomOptions = {
    ...(patternShafts === undefined ? {} : { patternShafts }),
    ...(groundShafts === undefined ? {} : { groundShafts }),
    ...(treadles === undefined ? {} : { treadles }),
    ...(lingos === undefined ? {} : { lingos }),
  };
  return {
    sett,
    limits,
    loom,
    levels,
    waive,
    ...(stated.length === 0 ? {} : { stated }),
    ...(cloth.firstPickFrom === undefined ? {} : { firstPickFrom: cloth.firstPickFrom }),
    ...(cloth.repeat === undefined ? {} : { repeat: cloth.repeat }),
    ...(staticShaft === undefined ? {} : { staticShaft }),
  };
}

function perCm<Name extends string>(
  name: Name,
  quantity: Quantity | undefined,
): { readonly [key in Name]?: number } {
  return quantity === undefined ? {} : ({ [name]: toMetric(quantity).value } as { [key in Name]: number });
}
