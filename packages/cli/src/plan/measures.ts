import { inUnits, metric, type Quantity } from "@drawcord/yarn";

/** A number as a script gets it: metric, rounded as it is printed. */
export interface Measure {
  readonly value: number;
  readonly unit: string;
}

/** A quantity for a script. */
export function measure(from: Quantity): Measure {
  const { unit, value } = metric(from);
  return { value, unit };
}

/** A quantity for a reader: metric, and in inches, yards, ounces or pounds where these are used. */
export function both(from: Quantity): string {
  return inUnits(from, "both");
}
