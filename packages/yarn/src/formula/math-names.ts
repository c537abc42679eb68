import type { UnitName } from "../quantity/units.js";

/** The units that a formula carries, as mathjs writes them; numbers and shares are carried as plain numbers. */
export const mathNames: Readonly<Partial<Record<UnitName, string>>> = {
  mm: "mm",
  cm: "cm",
  m: "m",
  km: "km",
  in: "inch",
  ft: "foot",
  yd: "yard",
  mg: "mg",
  g: "g",
  kg: "kg",
  gr: "grain",
  oz: "ounce",
  lb: "lbm",
  "per cm": "cm^-1",
  "per 10 cm": "dm^-1",
  "per inch": "inch^-1",
  tex: "tex",
  dtex: "dtex",
  den: "denier",
  "g/m2": "g/m^2",
  "oz/yd2": "ounce/yard^2",
  "g/cm3": "g/cm^3",
};
