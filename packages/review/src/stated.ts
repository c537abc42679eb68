import type { StatedNumber } from "@drawcord/check";
import { FileError, placesOf, projectOf, type Recipe, type Stated, type StatedName } from "@drawcord/files";
import { convert, type Plan, type PlanYarn, plan, type Quantity, quantity, YarnError } from "@drawcord/yarn";

/** The stated numbers that the cloth tells itself, with their units. */
const ofCloth: Readonly<Partial<Record<StatedName, string>>> = {
  ends: "ends",
  picks: "picks",
  units: "units",
  rows: "rows",
  "longest-float": "threads",
};

/** All numbers stated in a recipe, those of the project (widths, lengths, pieces, yarn, weight) worked out beside them. */
export function statedNumbers(recipe: Recipe): readonly StatedNumber[] {
  const counted = new Map([...statedOfCloth(recipe), ...statedLingos(recipe)].map((one) => [one.name, one]));
  const project = recipe.stated.every(({ name }) => counted.has(name)) ? undefined : planned(recipe);
  return recipe.stated.flatMap((one) => {
    const told = counted.get(one.name);
    if (told !== undefined) return [told];
    const found = project && numberOf(project, one);
    return found === undefined ? [] : [comparison(one, found)];
  });
}

/** The stated numbers that the cloth tells by itself: ends, picks, units, rows and the longest float. */
function statedOfCloth({ stated }: Recipe): StatedNumber[] {
  return stated.flatMap(({ claim, line, name }) => {
    const unit = ofCloth[name];
    return unit === undefined ? [] : [{ name, claim: claim.value, unit, line }];
  });
}

/** Lingos are counted without a formula: one for each unit. */
function statedLingos({ draft, stated }: Recipe): readonly StatedNumber[] {
  const lingos = quantity(draft.threading.length, "lingos");
  return stated.flatMap((one) => (one.name === "lingos" ? [comparison(one, lingos)] : []));
}

/** The plan of a recipe's project; where a number of it cannot be, the stated numbers are what asked for it. */
function planned(recipe: Recipe): Plan {
  try {
    return plan(projectOf(recipe));
  } catch (error) {
    if (!(error instanceof YarnError)) throw error;
    const places = placesOf(recipe);
    const place = places.at(["stated"]) ?? places.at([])!;
    throw new FileError("bad-value", error.message, recipe.file, place);
  }
}

/** A claim beside the number that it is about, both in the unit of the claim. */
function comparison({ claim, line, name }: Stated, found: Quantity): StatedNumber {
  const counted = found.kind === "number";
  return {
    name,
    claim: claim.value,
    unit: counted ? name : claim.unit,
    found: counted ? found.value : convert(found, claim.unit).value,
    within: counted ? 0 : rounding(claim.value),
    line,
  };
}

/** Half of the last digit in which a number is printed: 0.05 for 14.1. */
function rounding(value: number): number {
  const decimals = `${value}`.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** -decimals;
}

/** The number of a plan that a claim is about; undefined where it cannot be worked out. */
function numberOf(plan: Plan, { claim, name }: Stated): Quantity | undefined {
  switch (name) {
    case "pieces":
      return plan.pieces;
    case "width-in-reed":
      return plan.widthInReed;
    case "finished-width":
      return plan.finishedWidth;
    case "finished-length":
      return plan.finishedLength;
    case "warp-length":
      return plan.warpLength;
    case "left-over":
      return plan.leftOver;
    case "warp-yarn":
      return plan.warpYarn && ofYarns([plan.warpYarn], claim);
    case "weft-yarn":
      return ofYarns(plan.weftYarn, claim);
    case "cloth-weight":
      return plan.clothWeight;
    default:
      return undefined;
  }
}

/** Length or weight of yarns together, whichever is claimed; undefined where it is not known of each. */
function ofYarns(yarns: readonly PlanYarn[], { kind, unit }: Quantity): Quantity | undefined {
  const parts = yarns.map(({ length, mass }) => (kind === "mass" ? mass : length));
  if (parts.length === 0 || parts.some((part) => part === undefined)) return undefined;
  return quantity(
    parts.reduce((sum, part) => sum + convert(part!, unit).value, 0),
    unit,
  );
}
