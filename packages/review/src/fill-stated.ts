import { projectOf, type Recipe, type StatedName } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { plan, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { checkRecipe } from "./check-recipe.js";
import { numberOf } from "./stated.js";

/** The numbers of a plan that a recipe states, each in a unit and to the decimals in which it is printed. */
const planned: Readonly<Partial<Record<StatedName, Quantity & { readonly decimals: number }>>> = {
  "width-in-reed": { ...quantity(0, "mm"), decimals: 1 },
  "finished-width": { ...quantity(0, "mm"), decimals: 1 },
  "finished-length": { ...quantity(0, "mm"), decimals: 0 },
  "warp-length": { ...quantity(0, "mm"), decimals: 0 },
  "left-over": { ...quantity(0, "mm"), decimals: 0 },
  "warp-yarn": { ...quantity(0, "m"), decimals: 0 },
  "weft-yarn": { ...quantity(0, "m"), decimals: 0 },
  "cloth-weight": { ...quantity(0, "g/m2"), decimals: 0 },
};

/**
 * Every number that the recipe may state, as it comes out, in the words of its section `stated`: a recipe that states them
 * agrees with itself.
 * @param recipe a recipe as `readRecipe` gives it
 * @throws {YarnError} as `plan`
 * @example statedValues(recipe).units // 2
 */
export function statedValues(recipe: Recipe): Readonly<Partial<Record<StatedName, string | number>>> {
  const { ends, picks, rows, units } = draftSize(recipe.draft);
  const found = plan(projectOf(recipe));
  const { floats } = checkRecipe(recipe);
  const longest = Math.max(...Object.values(floats).map((tally) => tally.longest));
  const measured = Object.entries(planned).flatMap(([name, as]) => {
    const value = numberOf(found, { name: name as StatedName, claim: as });
    return value === undefined ? [] : [[name, inUnit(value, as)] as const];
  });
  return {
    ends,
    picks,
    units,
    rows,
    lingos: units,
    pieces: found.pieces.value,
    "longest-float": longest,
    ...Object.fromEntries(measured),
  };
}

function inUnit(
  value: Quantity,
  { decimals, unit }: { readonly decimals: number; readonly unit: Quantity["unit"] },
): string {
  // A weight of cloth is written as it is read: g/m2.
  const written = printQuantity({ ...value, unit }, { decimals });
  return `${written.split(" ")[0]} ${unit}`;
}
