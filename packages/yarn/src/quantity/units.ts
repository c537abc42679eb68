/** What a quantity measures. */
export type Kind =
  | "number"
  | "length"
  | "mass"
  | "sett"
  | "share"
  | "linear-density"
  | "area-weight"
  | "density";

/** A unit as it is written back: `8 mm`, `24 per inch`, `198 g/m2`; a bare number has the empty unit. */
export type UnitName =
  | ""
  | "threads"
  | "ends"
  | "picks"
  | "pieces"
  | "units"
  | "rows"
  | "lingos"
  | "mm"
  | "cm"
  | "m"
  | "km"
  | "in"
  | "ft"
  | "yd"
  | "mg"
  | "g"
  | "kg"
  | "gr"
  | "oz"
  | "lb"
  | "per cm"
  | "per 10 cm"
  | "per inch"
  | "%"
  | "tex"
  | "dtex"
  | "den"
  | "g/m2"
  | "oz/yd2"
  | "g/cm3";

/** One unit of measure. */
export interface Unit {
  readonly kind: Kind;
  /** Metric units of the kind in one of these, as an exact ratio of whole numbers. */
  readonly ratio: readonly [numerator: number, denominator: number];
  /** Other ways it is written, in lower case. */
  readonly names: readonly string[];
  /** How it is typeset, where not as its own letters. */
  readonly tex?: string;
}

/** What holds of every unit of a kind. */
interface KindSpec {
  /** The metric unit in which results are given. */
  readonly metric: UnitName;
  /** That unit in millimetres and grams: in these, quantities of all kinds go together in a formula. */
  readonly carried: number;
  /** How a quantity of the kind is asked for. */
  readonly asked: string;
}

/** The kinds of quantities. */
export const kinds: Readonly<Record<Kind, KindSpec>> = {
  number: { metric: "", carried: 1, asked: "a number such as 9 or 9 threads" },
  length: { metric: "mm", carried: 1, asked: "a length such as 30 cm or 12 in" },
  mass: { metric: "g", carried: 1, asked: "a weight such as 100 g or 4 oz" },
  sett: { metric: "per cm", carried: 0.1, asked: "a sett such as 24 per inch or 10 per cm" },
  share: { metric: "%", carried: 0.01, asked: "a share such as 8 %" },
  "linear-density": { metric: "tex", carried: 1e-6, asked: "a yarn such as 20 tex" },
  "area-weight": { metric: "g/m2", carried: 1e-6, asked: "a weight of cloth such as 200 g/m2" },
  density: { metric: "g/cm3", carried: 1e-3, asked: "a density such as 1.52 g/cm3" },
};

/**
 * Every unit that is read. Inch, yard and pound by the international yard and pound: 1 in = 25.4 mm, 1 yd = 0.9144 m,
 * 1 lb = 0.45359237 kg = 16 oz = 7000 gr, all exact.
 * Source: NIST Special Publication 811, appendix B.
 */
export const units: Readonly<Record<UnitName, Unit>> = {
  "": { kind: "number", ratio: [1, 1], names: [] },
  threads: { kind: "number", ratio: [1, 1], names: ["thread"] },
  ends: { kind: "number", ratio: [1, 1], names: ["end"] },
  picks: { kind: "number", ratio: [1, 1], names: ["pick"] },
  pieces: { kind: "number", ratio: [1, 1], names: ["piece"] },
  units: { kind: "number", ratio: [1, 1], names: ["unit"] },
  rows: { kind: "number", ratio: [1, 1], names: ["row"] },
  lingos: { kind: "number", ratio: [1, 1], names: ["lingo"] },
  mm: { kind: "length", ratio: [1, 1], names: ["millimetre", "millimetres", "millimeter", "millimeters"] },
  cm: { kind: "length", ratio: [10, 1], names: ["centimetre", "centimetres", "centimeter", "centimeters"] },
  m: { kind: "length", ratio: [1000, 1], names: ["metre", "metres", "meter", "meters"] },
  km: {
    kind: "length",
    ratio: [1_000_000, 1],
    names: ["kilometre", "kilometres", "kilometer", "kilometers"],
  },
  in: { kind: "length", ratio: [127, 5], names: ["in.", "inch", "inches", '"', "″"] },
  ft: { kind: "length", ratio: [1524, 5], names: ["foot", "feet", "'", "′"] },
  yd: { kind: "length", ratio: [4572, 5], names: ["yds", "yard", "yards"] },
  mg: { kind: "mass", ratio: [1, 1000], names: ["milligram", "milligrams"] },
  g: { kind: "mass", ratio: [1, 1], names: ["gram", "grams", "gramme", "grammes"] },
  kg: { kind: "mass", ratio: [1000, 1], names: ["kilo", "kilos", "kilogram", "kilograms"] },
  gr: { kind: "mass", ratio: [6_479_891, 100_000_000], names: ["grain", "grains"] },
  oz: { kind: "mass", ratio: [45_359_237, 1_600_000], names: ["ounce", "ounces"] },
  lb: { kind: "mass", ratio: [45_359_237, 100_000], names: ["lbs", "pound", "pounds"] },
  "per cm": { kind: "sett", ratio: [1, 1], names: ["epcm", "ppcm"], tex: "\\mathrm{cm}^{-1}" },
  "per 10 cm": { kind: "sett", ratio: [1, 10], names: ["per dm", "/dm"], tex: "(10\\,\\mathrm{cm})^{-1}" },
  "per inch": {
    kind: "sett",
    ratio: [50, 127],
    names: ["epi", "ppi", "dpi", "wpi"],
    tex: "\\mathrm{in}^{-1}",
  },
  "%": { kind: "share", ratio: [1, 1], names: ["percent", "per cent"], tex: "\\%" },
  tex: { kind: "linear-density", ratio: [1, 1], names: ["g/km"] },
  dtex: { kind: "linear-density", ratio: [1, 10], names: ["decitex"] },
  den: { kind: "linear-density", ratio: [1, 9], names: ["denier"] },
  "g/m2": { kind: "area-weight", ratio: [1, 1], names: ["gsm", "g/m²", "g/m^2"], tex: "\\mathrm{g/m^{2}}" },
  "oz/yd2": {
    kind: "area-weight",
    ratio: [5_669_904_625, 167_225_472],
    names: ["oz/yd²", "oz/yd^2", "oz/sq yd"],
    tex: "\\mathrm{oz/yd^{2}}",
  },
  "g/cm3": { kind: "density", ratio: [1, 1], names: ["g/cm³", "g/cm^3"], tex: "\\mathrm{g/cm^{3}}" },
};

/** A value with its unit, as plain data. */
export interface Quantity {
  /** The number. */
  readonly value: number;
  /** Its unit. */
  readonly unit: UnitName;
  /** What it measures. */
  readonly kind: Kind;
}

/**
 * A quantity of a unit named in code.
 * @param value the number
 * @param unit its unit
 * @example quantity(8, "mm") // { value: 8, unit: "mm", kind: "length" }
 */
export function quantity(value: number, unit: UnitName): Quantity {
  return { value, unit, kind: units[unit].kind };
}
