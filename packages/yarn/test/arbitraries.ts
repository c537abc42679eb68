import fc from "fast-check";
import {
  type CountSystemId,
  convert,
  countSystems,
  type Kind,
  type Quantity,
  quantity,
  type Reed,
  type ReedSystemId,
  reedSystems,
  toMetric,
  type UnitName,
  type Yarn,
} from "../src/index.js";
import type { Drawdown } from "../src/sett/interlacing.js";

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

/** A count system. */
export const countSystem = (): fc.Arbitrary<CountSystemId> =>
  fc.constantFrom(...(Object.keys(countSystems) as CountSystemId[]));

/** A yarn that can be: of any system, 1 to 700 tex a single, up to six plies. */
export const yarn = (): fc.Arbitrary<Yarn> =>
  fc
    .tuple(
      countSystem(),
      fc.double({ min: 1, max: 700, noNaN: true }),
      fc.integer({ min: 1, max: 6 }),
      fc.boolean(),
    )
    .map(([system, single, plies, resultant]) => {
      const { counts, length, mass } = countSystems[system];
      const km = toMetric(length).value / 1e6;
      const count =
        counts === "lengths" ? toMetric(mass).value / (single * km) : (single * km) / toMetric(mass).value;
      // Yards a pound and metres in 100 g are measured on the whole yarn: they have no plies.
      const whole = system === "yards-a-pound" || system === "metres-in-100-g";
      return {
        system,
        count: Number(count.toPrecision(6)),
        plies: whole ? 1 : plies,
        resultant: resultant && plies > 1 && !whole,
      };
    });

/** A drawdown: up to 12 by 12, some with threads that never change. */
export const anyDrawdown = (): fc.Arbitrary<Drawdown> =>
  fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 })).chain(([rows, columns]) =>
    fc
      .array(fc.array(fc.boolean(), { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      })
      .map((cells) => ({ rows, columns, get: (row: number, column: number) => cells[row]![column]! })),
  );

/** A reed of any count: 2 to 60 dents an inch or so. */
export const reed = (): fc.Arbitrary<Reed> =>
  fc
    .tuple(fc.constantFrom(...(Object.keys(reedSystems) as ReedSystemId[])), fc.integer({ min: 4, max: 120 }))
    .map(([system, count]) => ({ system, count }));

/** A share from 0 up to the most. */
export const share = (most: number): fc.Arbitrary<Quantity> =>
  fc.double({ min: 0, max: most, noNaN: true }).map((value) => quantity(value, "%"));

/** A length in any unit, between two in millimetres. */
export const length = (min: number, max: number): fc.Arbitrary<Quantity> =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), unitOf("length"))
    .map(([value, unit]) => convert(quantity(value, "mm"), unit));
