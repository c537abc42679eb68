import { imperial, isResult, type Quantity, rounded, toMetric, writeQuantity } from "@drawcord/yarn";

/** A number as a script gets it: metric, rounded as it is printed. */
export interface Measure {
  readonly value: number;
  readonly unit: string;
}

/** A quantity in the metric unit of its kind, rounded: a result as its formula says, a given one to 4 decimals. */
export function metric(from: Quantity): Quantity {
  if (isResult(from)) return rounded(from);
  // What is counted keeps its name: 564 ends.
  const found = from.kind === "number" ? from : toMetric(from);
  return { ...found, value: Number(found.value.toFixed(4)) };
}

/** A quantity for a script. */
export function measure(from: Quantity): Measure {
  const { unit, value } = metric(from);
  return { value, unit };
}

/** A quantity for a reader: metric, and in inches, yards, ounces or pounds where these are used. */
export function both(from: Quantity): string {
  const here = writeQuantity(metric(from));
  const other = imperial(from);
  return other === undefined
    ? here
    : `${here} (${writeQuantity(other, { decimals: other.value < 1 ? 4 : 2 })})`;
}
