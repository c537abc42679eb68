import { roundHalf } from "./round.js";
import { type Quantity, units } from "./units.js";

/** How a quantity is printed. */
export interface QuantityPrintOptions {
  /** Decimals kept at the most, from 0 to 15; trailing zeros are dropped. Default: all that the value has. */
  readonly decimals?: number;
}

/**
 * A quantity as text that reads back as the same one.
 * @param from a quantity in any unit
 * @param options decimals to round to; as many as it has by default
 * @example printQuantity({ value: 358.14, unit: "mm", kind: "length" }, { decimals: 1 }) // "358.1 mm"
 * @example printQuantity({ value: 198, unit: "g/m2", kind: "area-weight" }) // "198 g/m²"
 */
export function printQuantity(from: Quantity, options: QuantityPrintOptions = {}): string {
  const { decimals } = options;
  const value = decimals === undefined ? from.value : roundHalf(from.value, decimals);
  return from.unit === "" ? `${value}` : `${value} ${writeUnit(from, value)}`;
}

/** What is counted stands in the singular where there is one of it; squares and cubes are set as such. */
function writeUnit({ unit, kind }: Quantity, value: number): string {
  if (kind === "number" && value === 1) return units[unit].names[0]!;
  return unit.replace(/[23]$/, (power) => (power === "2" ? "²" : "³"));
}
