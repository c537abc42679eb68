import { YarnError } from "../error.js";
import { kinds, type Quantity, quantity, type UnitName, units } from "./units.js";

/** Greatest common divisor of two whole numbers over 0. */
function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/**
 * A quantity in another unit of its kind. The two exact ratios are crossed and reduced before the value is touched, so
 * that it is rounded twice at the most.
 * @param from a quantity in any unit
 * @param unit a unit of the same kind
 * @throws {YarnError} `wrong-kind` when the unit measures something else
 * @example convert(quantity(36, "in"), "yd").value // 1
 */
export function convert(from: Quantity, unit: UnitName): Quantity {
  const source = units[from.unit];
  const target = units[unit];
  if (source.kind !== target.kind) {
    throw new YarnError(
      "wrong-kind",
      `${from.value} ${from.unit} cannot be given in ${unit || "a bare number"}`,
      {
        unit: from.unit,
        wanted: unit,
      },
    );
  }
  if (from.unit === unit) return from;
  const up = divisor(source.ratio[0], target.ratio[0]);
  const down = divisor(source.ratio[1], target.ratio[1]);
  const over = (source.ratio[0] / up) * (target.ratio[1] / down);
  const under = (source.ratio[1] / down) * (target.ratio[0] / up);
  const common = divisor(over, under);
  return quantity((from.value * (over / common)) / (under / common), unit);
}

/**
 * A quantity in the metric unit of its kind: mm, g, threads per cm, %, tex, g/m2.
 * @param from a quantity in any unit
 * @example toMetric(parseQuantity("24 per inch")).value // 9.448819
 */
export function toMetric(from: Quantity): Quantity {
  return convert(from, kinds[from.kind].metric);
}
