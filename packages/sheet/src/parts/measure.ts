import { imperial, isResult, type Quantity, rounded, toMetric, writeQuantity } from "@drawcord/yarn";
import type { UnitSystem } from "./context.js";

/** A quantity in its metric unit, rounded as it is printed: a result as its formula says, a given one to 4 decimals. */
function metric(from: Quantity): Quantity {
  if (isResult(from)) return rounded(from);
  const found = from.kind === "number" ? from : toMetric(from);
  return { ...found, value: Number(found.value.toFixed(4)) };
}

/**
 * A quantity as a sheet prints it, in the units asked for. What has no unit of the inch and pound stays metric.
 * @example printed({ value: 358.14, unit: "mm", kind: "length" }, "both") // "358.14 mm (14.1 in)"
 */
export function printed(from: Quantity, units: UnitSystem): string {
  const here = writeQuantity(metric(from));
  const other = units === "metric" ? undefined : imperial(from);
  if (other === undefined) return here;
  const there = writeQuantity(other, { decimals: other.value < 1 ? 4 : 2 });
  return units === "both" ? `${here} (${there})` : there;
}
