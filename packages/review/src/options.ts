import {
  type CheckOptions,
  type LoomOptions,
  projectNumbers,
  type Sett,
  type YarnOrder,
} from "@drawcord/check";
import { groundStartOf, projectOf, type Recipe } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { type Quantity, toMetric } from "@drawcord/yarn";
import { namedRules } from "./rule-names.js";
import { statedNumbers } from "./stated.js";

/**
 * How the checker is to look at the cloth of a recipe: its sett, limits, repeat, first pick, static shaft, loom, levels,
 * waivers, project and stated numbers, and how its first piece was put together.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param whole the recipe of all that is woven on the warp, where the other is of one design of it alone
 * @throws {FileError} `unknown-key`, `bad-value` for a rule that there is none of
 * @example optionsOf(recipe).sett // {}
 */
export function optionsOf(recipe: Recipe, whole?: Recipe): CheckOptions {
  const { cloth, limits, staticShaft } = recipe;
  const piece = recipe.pieces[0]!;
  const project = projectNumbers({
    ...projectOf(recipe),
    ...(whole === undefined ? {} : { onWarp: projectOf(whole) }),
    ...(recipe.loom.lingoWeight === undefined ? {} : { lingoWeight: recipe.loom.lingoWeight }),
  });
  // Of a sample that was measured the picks are those that the weaver really beats.
  const sett: Sett = {
    ...perCm("endsPerCm", cloth.sett),
    ...perCm("picksPerCm", project.facts.pickSett),
  };
  const stated = statedNumbers(whole ?? recipe);
  const groundStart = groundStartOf(whole ?? recipe);
  const { patternShafts, groundShafts, treadles, lingos, heddles, weavingWidth } = recipe.loom;
  const loom: LoomOptions = {
    ...(patternShafts === undefined ? {} : { patternShafts }),
    ...(groundShafts === undefined ? {} : { groundShafts }),
    ...(treadles === undefined ? {} : { treadles }),
    ...(lingos === undefined ? {} : { lingos }),
    ...(heddles === undefined ? {} : { heddles }),
    ...(cloth.reedWidth === undefined ? {} : { reedWidth: toMetric(cloth.reedWidth).value }),
    ...(weavingWidth === undefined ? {} : { weavingWidth: toMetric(weavingWidth).value }),
  };
  return {
    sett,
    limits,
    loom,
    ...namedRules(recipe),
    project,
    ...(stated.length === 0 ? {} : { stated }),
    ...(groundStart === undefined ? {} : { groundStart }),
    ...(cloth.firstPickFrom === undefined ? {} : { firstPickFrom: cloth.firstPickFrom }),
    ...(cloth.firstPickOf === undefined ? {} : { firstPickOf: cloth.firstPickOf }),
    yarnOfPick: piece.wefts,
    yarnOrders: [...orderOfWarp(recipe), ...piece.yarnOrders],
    ...(piece.order === undefined
      ? {}
      : { woven: { order: piece.order, blocks: piece.blocks ?? {}, over: piece.over } }),
    ...(cloth.repeat === undefined ? {} : { repeat: cloth.repeat }),
    ...(staticShaft === undefined ? {} : { staticShaft }),
  };
}

/** The order of yarns over the ends. */
function orderOfWarp({ draft, warp }: Recipe): readonly YarnOrder[] {
  const { ends } = draftSize(draft);
  return [{ system: "warp", yarns: warp, threads: ends, path: ["colours", "warp"] }];
}

function perCm<Name extends string>(
  name: Name,
  quantity: Quantity | undefined,
): { readonly [key in Name]?: number } {
  return quantity === undefined ? {} : ({ [name]: toMetric(quantity).value } as { [key in Name]: number });
}
