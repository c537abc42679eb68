import { convert, type Kind, type Quantity, type UnitName, type UnitSystem } from "@drawcord/yarn";

/** The unit in which each kind of quantity enters a working; a kind that is left out stays in its own. */
export type WorkingUnits = Readonly<Partial<Record<Kind, UnitName>>>;

/** From this length on, in mm, a length is worked out in metres or yards. */
const LONG = 1000;

/**
 * The units in which the numbers of one working go together: those of the sheet, one for all its lengths.
 * @param quantities the values of the working and its result
 * @example workingUnits([{ value: 270, unit: "mm", kind: "length" }], "metric").length // "cm"
 */
export function workingUnits(quantities: readonly Quantity[], system: UnitSystem): WorkingUnits {
  const kinds = new Set(quantities.map(({ kind }) => kind));
  const longest = quantities.reduce(
    (most, one) => (one.kind === "length" ? Math.max(most, convert(one, "mm").value) : most),
    0,
  );
  // Setts go by the centimetre or inch, weights of cloth by the square metre or yard.
  const isLong = kinds.has("area-weight") || (longest >= LONG && !kinds.has("sett"));
  if (system === "imperial") {
    return {
      length: isLong ? "yd" : "in",
      mass: "oz",
      sett: "per inch",
      "area-weight": "oz/yd2",
    };
  }
  return { length: isLong ? "m" : "cm", mass: "g", sett: "per cm", "area-weight": "g/m2" };
}

/** A quantity in the unit of its kind. */
export function inWorkingUnits(quantity: Quantity, units: WorkingUnits): Quantity {
  const unit = units[quantity.kind];
  return unit === undefined ? quantity : convert(quantity, unit);
}
