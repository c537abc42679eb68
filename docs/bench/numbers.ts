import { projectOf, type Recipe } from "@drawcord/files";
import { explain, inUnits, isResult, plan, planNumbers, YarnError } from "@drawcord/yarn";
import type { ToldNumber } from "./messages.js";

/**
 * The numbers of a recipe's plan in the order in which a weaver needs them, each with its working.
 * @param recipe as it was read
 * @returns none where the plan cannot be worked out, which the checker then says
 */
export function numbersOf(recipe: Recipe): readonly ToldNumber[] {
  try {
    return planNumbers(plan(projectOf(recipe))).map(({ title, value }) => ({
      title,
      value: inUnits(value, "both"),
      ...(isResult(value) && { working: explain(value).text }),
    }));
  } catch (error) {
    if (error instanceof YarnError) return [];
    throw error;
  }
}
