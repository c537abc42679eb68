import type { Recipe } from "@drawcord/files";
import type { ShaftSet } from "@drawcord/ground";
import { diceOf } from "../random.js";
import { cornerOf, treadlesOf } from "../tasks/corner.js";

/** A piece of a loom to try: some ends with their shafts and units, all treadles, and the handles of these units. */
export interface PracticePlan {
  readonly title: string;
  /** Ends from the left: ground shaft, and unit by its number in the recipe, 0 for none. */
  readonly ends: readonly { readonly shaft: number; readonly unit: number }[];
  /** The units of these ends, and the handles that each hangs on. */
  readonly units: readonly { readonly number: number; readonly hangsOn: ShaftSet }[];
  readonly treadles: readonly { readonly raise: ShaftSet; readonly sink: ShaftSet }[];
  /** The handles that draw any of these units, ascending. */
  readonly handles: ShaftSet;
}

/** More treadles and ends than these are no small draft. */
const MOST_ENDS = 16;

/**
 * The piece of a recipe's loom that is tried: about 16 ends where figure and ground meet.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param seed which place of the cloth; default 1
 * @throws {UnitsError} for a draft that cannot be worked out
 * @example practicePlan(recipe).ends.length // 16
 */
export function practicePlan(recipe: Recipe, seed = 1): PracticePlan {
  const { draft, title = "A cloth without a name" } = recipe;
  const { shafts, units } = cornerOf(draft, diceOf(seed), MOST_ENDS, 8);
  const numbers = [...new Set(units)].filter((unit) => unit > 0);
  const hung = numbers.map((number) => ({ number, hangsOn: draft.threading[number - 1]! }));
  return {
    title,
    ends: shafts.map((shaft, i) => ({ shaft, unit: units[i]! })),
    units: hung,
    treadles: treadlesOf(draft.ground).treadles.map(({ raise, sink }) => ({ raise, sink })),
    handles: [...new Set(hung.flatMap(({ hangsOn }) => hangsOn))].sort((a, b) => a - b),
  };
}
