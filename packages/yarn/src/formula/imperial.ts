import { convert } from "../quantity/convert.js";
import type { Quantity, UnitName } from "../quantity/units.js";

/** The inch-and-pound unit in which a quantity of this size is usually named; undefined where there is none. */
function imperialUnit({ kind, unit, value }: Quantity): UnitName | undefined {
  if (kind === "length") return unit === "m" || value >= 2000 ? "yd" : "in";
  if (kind === "mass") return value >= 454 ? "lb" : "oz";
  if (kind === "sett") return "per inch";
  return kind === "area-weight" ? "oz/yd2" : undefined;
}

/**
 * A quantity in inches, yards, ounces or pounds; undefined for kinds that have no such unit.
 * @param from a quantity in any unit
 * @example imperial({ value: 254, unit: "mm", kind: "length" }) // { value: 10, unit: "in", kind: "length" }
 */
export function imperial(from: Quantity): Quantity | undefined {
  const unit = imperialUnit(from);
  return unit === undefined ? undefined : convert(from, unit);
}
