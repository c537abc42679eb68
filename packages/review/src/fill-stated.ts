import { projectOf, type Recipe, type Stated, type StatedName } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { convert, plan, printQuantity, type Quantity, quantity } from "@drawcord/yarn";
import { checkRecipe } from "./check-recipe.js";
import { decimalsIn, numberOf, rounding } from "./stated.js";

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
  const { floats } = checkRecipe(recipe, { rules: [], causes: false });
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

/**
 * The numbers that a recipe states and that were right, as they come out in the recipe changed: what was stated in one unit
 * and to so many decimals stays so. What was wrong already stays as it is.
 * @param before the recipe as it was
 * @param after the recipe as it is changed, its stated numbers not yet
 * @throws {YarnError} as `plan`
 * @example restated(recipe, recipe) // {}
 */
export function restated(
  before: Recipe,
  after: Recipe,
): Readonly<Partial<Record<StatedName, string | number>>> {
  if (before.stated.length === 0) return {};
  const [then, now] = [worked(before), worked(after)];
  const changed = before.stated.flatMap((one): [StatedName, string | number][] => {
    const { claim, name, text } = one;
    const [old, young] = [then(one), now(one)];
    const within = claim.kind === "number" ? 0 : rounding(text);
    const agrees = (value: number) => Math.abs(value - claim.value) <= within + 1e-9 * Math.abs(claim.value);
    if (old === undefined || young === undefined || !agrees(old) || agrees(young)) return [];
    if (claim.kind === "number") return [[name, young]];
    return [[name, `${young.toFixed(decimalsIn(text))} ${claim.unit}`]];
  });
  return Object.fromEntries(changed);
}

/** What a recipe makes of a stated number, in the unit of its claim. */
function worked(recipe: Recipe): (one: Stated) => number | undefined {
  const project = plan(projectOf(recipe));
  const counts = statedValues(recipe);
  return (one) => {
    const found = numberOf(project, one);
    if (found !== undefined) {
      return one.claim.kind === "number" ? found.value : convert(found, one.claim.unit).value;
    }
    const counted = counts[one.name];
    return typeof counted === "number" ? counted : undefined;
  };
}

function inUnit(
  value: Quantity,
  { decimals, unit }: { readonly decimals: number; readonly unit: Quantity["unit"] },
): string {
  // A weight of cloth is written as it is read: g/m2.
  const written = printQuantity(convert(value, unit), { decimals });
  return `${written.split(" ")[0]} ${unit}`;
}
