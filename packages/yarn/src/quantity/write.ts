import type { Quantity } from "./units.js";

/** How a quantity is printed. */
export interface WriteOptions {
  /** Decimals kept at the most, from 0 to 15; trailing zeros are dropped. Default: all that the value has. */
  readonly decimals?: number;
}

/**
 * A quantity as text that reads back as the same one.
 * @example writeQuantity({ value: 358.14, unit: "mm", kind: "length" }, { decimals: 1 }) // "358.1 mm"
 */
export function writeQuantity(from: Quantity, options: WriteOptions = {}): string {
  const { decimals } = options;
  const value = decimals === undefined ? from.value : Number(from.value.toFixed(decimals));
  return from.unit === "" ? `${value}` : `${value} ${from.unit}`;
}
