import { toMetric } from "../quantity/convert.js";
import { printQuantity } from "../quantity/print.js";
import { roundHalf } from "../quantity/round.js";
import type { Quantity } from "../quantity/units.js";
import { isResult } from "./calculate.js";
import { rounded } from "./explain.js";
import { imperial } from "./imperial.js";

/** In what lengths, weights and setts a number is printed. */
export type UnitSystem = "metric" | "imperial" | "both";

/**
 * A quantity in the metric unit of its kind, rounded as it is printed: a result as its formula says, a given one to 4
 * decimals. What is counted keeps its name: 540 ends.
 * @param from a quantity in any unit
 * @example metric({ value: 10, unit: "in", kind: "length" }) // { value: 254, unit: "mm", kind: "length" }
 */
export function metric(from: Quantity): Quantity {
  if (isResult(from)) return rounded(from);
  const found = from.kind === "number" ? from : toMetric(from);
  return { ...found, value: roundHalf(found.value, 4) };
}

/**
 * A quantity as it is printed in the units asked for. What has no unit of the inch and pound stays metric.
 * @param from a quantity in any unit
 * @param units metric, of the inch and pound, or both
 * @example inUnits({ value: 304.8, unit: "mm", kind: "length" }, "both") // "304.8 mm (12 in)"
 */
export function inUnits(from: Quantity, units: UnitSystem): string {
  const here = printQuantity(metric(from));
  const other = units === "metric" ? undefined : imperial(from);
  if (other === undefined) return here;
  const there = printQuantity(other, { decimals: other.value < 1 ? 4 : 2 });
  return units === "both" ? `${here} (${there})` : there;
}
