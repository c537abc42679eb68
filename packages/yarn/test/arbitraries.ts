import fc from "fast-check";
import { type Kind, type Quantity, quantity, type UnitName } from "../src/quantity.js";

const unitsOf: Readonly<Record<Kind, readonly UnitName[]>> = {
  number: ["", "threads", "ends", "picks", "pieces", "units", "rows", "lingos"],
  length: ["mm", "cm", "m", "km", "in", "ft", "yd"],
  mass: ["mg", "g", "kg", "gr", "oz", "lb"],
  sett: ["per cm", "per 10 cm", "per inch"],
  share: ["%"],
  "linear-density": ["tex", "dtex", "den"],
  "area-weight": ["g/m2", "oz/yd2"],
  density: ["g/cm3"],
};

/** Any kind of quantity. */
export const kind = (): fc.Arbitrary<Kind> => fc.constantFrom(...(Object.keys(unitsOf) as Kind[]));

/** A unit of a kind. */
export const unitOf = (of: Kind): fc.Arbitrary<UnitName> => fc.constantFrom(...unitsOf[of]);

/** Values that are measured in practice, the smallest and largest included. */
export const measure = (): fc.Arbitrary<number> =>
  fc.oneof(
    fc.double({ min: 0.001, max: 100_000, noNaN: true }),
    fc.integer({ min: 1, max: 10_000 }),
    fc.constantFrom(0.001, 0.1, 1 / 3, 1, 99_999.999),
  );

/** A quantity above 0, of one kind or any. */
export const quantityOf = (of?: Kind): fc.Arbitrary<Quantity> =>
  (of === undefined ? kind() : fc.constant(of)).chain((one) =>
    fc.tuple(measure(), unitOf(one)).map(([value, unit]) => quantity(value, unit)),
  );
