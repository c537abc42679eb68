import { quantity } from "../quantity/units.js";
import { planPurchases } from "./buy.js";
import { planFirmness } from "./firmness.js";
import { goesBy } from "./goes-by.js";
import { planLength } from "./length.js";
import { movedBetween } from "./moved.js";
import { sampleNumbers, sampleWeight, withSample } from "./sample.js";
import type { Plan, Project } from "./types.js";
import { planWidth } from "./width.js";
import { planClothWeight, planYarns } from "./yarns.js";

/**
 * Every number of a project: widths, lengths, pieces, yarns and weight of the cloth, as far as what is known goes; what is
 * missing for the others is said in a sentence each. Given pieces make the warp; a warp already wound makes the pieces. What
 * was measured on a sample goes before what is given or assumed, and the plan says by how much it moves.
 * @param project what is known; what is left out is assumed or missing
 * @throws {YarnError} as `calculate` and `tex`, for values that cannot be
 * @example plan({ ends: 540, picks: 960, sett: parseQuantity("10 per cm") }).widthInReed.value // 540
 */
export function plan(project: Project): Plan {
  const { measured, ...unmeasured } = project;
  if (measured === undefined) return planned(project);
  const before = planned(unmeasured);
  const found = planned(withSample(project));
  const clothWeight = sampleWeight(project);
  const after: Plan = { ...found, ...(clothWeight && { clothWeight }) };
  return {
    ...after,
    sample: { numbers: sampleNumbers(project, before), moved: movedBetween(before, after) },
  };
}

function planned(project: Project): Plan {
  const width = planWidth(project);
  const { designs, ...length } = planLength(project);
  const yarns = planYarns(project, { ...width, ...length, designs });
  const clothWeight = planClothWeight(project, { ...width, designs });
  const firmness = planFirmness(project, width.sett);
  const { units, lingos } = project;
  return {
    ends: quantity(project.ends, "ends"),
    ...(units === undefined ? {} : { units: quantity(units, "units") }),
    ...(lingos === undefined ? {} : { lingos: quantity(lingos, "lingos") }),
    ...width,
    ...(firmness === undefined ? {} : { firmness }),
    ...length,
    ...yarns,
    buy: planPurchases(project, yarns),
    ...(clothWeight === undefined ? {} : { clothWeight }),
    goesBy: goesBy(project),
    missing: [...width.missing, ...length.missing, ...yarns.missing],
    notes: [...width.notes, ...length.notes],
  };
}
