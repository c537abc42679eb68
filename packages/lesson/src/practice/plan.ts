import type { Recipe } from "@drawcord/files";
import type { ShaftSet } from "@drawcord/ground";
import { diceOf } from "../random.js";
import { cornerOf, treadlesOf } from "../tasks/corner.js";

/** A piece of a loom to try: some ends with their shafts and units, all treadles, and the handles of these units. */
export interface PracticePlan {
  /** The recipe's title. */
  readonly title: string;
  /** Ends from the left: ground shaft, and unit by its number in the recipe, 0 for none. */
  readonly ends: readonly {
    /** The ground shaft, from 1. */
    readonly shaft: number;
    /** The unit by its number in the recipe; 0 for none. */
    readonly unit: number;
  }[];
  /** The units of these ends, and the handles that each hangs on. */
  readonly units: readonly {
    /** The unit's number in the recipe, from 1. */
    readonly number: number;
    /** The handles that draw it, ascending; empty for a static unit. */
    readonly hangsOn: ShaftSet;
  }[];
  /** Treadle 1 first: what each does to the ground shafts. */
  readonly treadles: readonly {
    /** The ground shafts that it raises, from 1. */
    readonly raise: ShaftSet;
    /** The ground shafts that it sinks, from 1. */
    readonly sink: ShaftSet;
  }[];
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
