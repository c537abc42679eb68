import type { CheckOptions, LoomOptions, Sett } from "@drawcord/check";
import { type Quantity, toMetric } from "@drawcord/yarn/quantity";
import type { Recipe } from "./types.js";

/**
 * How the checker is to look at the cloth of a recipe: its sett, limits, repeat, static shaft, loom, levels and waivers.
 * @example checkOptions(readRecipe(text, "least")).sett // {}
 */
export function checkOptions(recipe: Recipe): CheckOptions {
  const { cloth, limits, levels, waive, staticShaft } = recipe;
  const sett: Sett = { ...perCm("endsPerCm", cloth.sett), ...perCm("picksPerCm", cloth.picks) };
  const { patternShafts, groundShafts, treadles } = recipe.loom;
  const loom: LoomOptions = {
    ...(patternShafts === undefined ? {} : { patternShafts }),
    ...(groundShafts === undefined ? {} : { groundShafts }),
    ...(treadles === undefined ? {} : { treadles }),
  };
  return {
    sett,
    limits,
    loom,
    levels,
    waive,
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
