import type { StatedNumber } from "@drawcord/check";
import { projectOf, type Recipe, type Stated, type StatedName } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { convert, type Plan, type PlanYarn, plan, type Quantity, quantity, YarnError } from "@drawcord/yarn";
import { slipsOf } from "./slips.js";

/** The stated numbers that the cloth tells itself, with their units. */
const ofCloth: Readonly<Partial<Record<StatedName, string>>> = {
  ends: "ends",
  picks: "picks",
  units: "units",
  rows: "rows",
  "longest-float": "threads",
};

/**
 * All numbers stated in a recipe, those of the project (widths, lengths, pieces, yarn, weight) worked out beside them, with
 * what known slips would have made of them.
 */
export function statedNumbers(recipe: Recipe): readonly StatedNumber[] {
  if (recipe.stated.length === 0) return [];
  const project = planned(recipe);
  const { units } = draftSize(recipe.draft);
  return recipe.stated.flatMap((one) => {
    const { claim, line, name } = one;
    const slips = slipsOf(recipe, project, one);
    const unit = ofCloth[name];
    if (unit !== undefined) return [{ name, claim: claim.value, unit, line, slips }];
    // Lingos are counted without a formula: one for each unit.
    const found = name === "lingos" ? quantity(units, "lingos") : project && numberOf(project, one);
    return found === undefined ? [] : [{ ...comparison(one, found), slips }];
  });
}

/** The plan of a recipe's project; none where a number of it cannot be, which has a rule of its own. */
function planned(recipe: Recipe): Plan | undefined {
  try {
    return plan(projectOf(recipe));
  } catch (error) {
    if (error instanceof YarnError) return undefined;
    throw error;
  }
}

/** A claim beside the number that it is about, both in the unit of the claim. */
function comparison({ claim, line, name, text }: Stated, found: Quantity): StatedNumber {
  const counted = found.kind === "number";
  return {
    name,
    claim: claim.value,
    unit: counted ? name : claim.unit,
    found: counted ? found.value : convert(found, claim.unit).value,
    within: counted ? 0 : rounding(text),
    line,
  };
}

/** Half of the last digit in which a number is printed: 0.05 for 27.4, 0.005 for 3.00. */
export function rounding(text: string): number {
  return 0.5 * 10 ** -decimalsIn(text);
}

/** The decimals to which a number is printed. */
export function decimalsIn(text: string): number {
  return /[.,](\d+)/.exec(text)?.[1]?.length ?? 0;
}

/** The number of a plan that a claim is about; undefined where it cannot be worked out. */
export function numberOf(plan: Plan, { claim, name }: Pick<Stated, "claim" | "name">): Quantity | undefined {
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
