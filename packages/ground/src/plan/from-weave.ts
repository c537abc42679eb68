import type { Ground } from "../types.js";
import { chosenGround, type GroundPlanOptions } from "./choose.js";

/**
 * The ground of a recipe's `ground.weave`: the best raise and sink plan of the weave described.
 * @param description such as `plain`, `twill 1/3`, `broken twill`, `satin 8 step 3`
 * @param options the ends it is counted on, and the ends of a unit and picks of a row, which decide how it cuts
 * @throws {GroundError} as `groundPlanOf`; errors in the text have the column as `facts.column`
 * @example groundFromWeave("satin 8 step 3").steps[0] // { raise: [2], sink: [7] }
 */
export function groundFromWeave(description: string, options: GroundPlanOptions = {}): Ground {
  return chosenGround(description, options).ground;
}
