import { metric } from "../formula/in-units.js";
import { type Quantity, quantity } from "../quantity/units.js";
import { planNumbers } from "./numbers.js";
import type { Moved, Plan } from "./types.js";

/** The numbers in which two plans differ as they are printed, in the order of the plan. */
export function movedBetween(before: Plan, after: Plan): Moved[] {
  const now = new Map(planNumbers(after).map((one) => [one.name, one.value]));
  return planNumbers(before).flatMap(({ name, title, value }) => {
    const moved = now.get(name);
    if (moved === undefined) return [];
    const by = apart(metric(value), metric(moved));
    return by.value === 0 ? [] : [{ name, title, before: value, after: moved, by }];
  });
}

/** What the second is more than the first, without the dust of binary digits. */
function apart(one: Quantity, other: Quantity): Quantity {
  return quantity(Number((other.value - one.value).toPrecision(12)), one.unit);
}
