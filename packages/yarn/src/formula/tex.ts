import { type Quantity, units } from "../quantity/units.js";

const greek = /* @__PURE__ */ new Set(["pi", "phi", "rho"]);

/**
 * A number to six significant figures, as it is printed in a working.
 * @example figures(26.458333333) // "26.4583"
 */
export function figures(value: number): string {
  return `${Number(value.toPrecision(6))}`;
}

/** A quantity in TeX. */
export function texQuantity({ kind, unit, value }: Quantity): string {
  const number = figures(value).replace(/e\+?(-?\d+)$/, "\\cdot 10^{$1}");
  return kind === "number" ? number : `${number}\\,${units[unit].tex ?? `\\mathrm{${unit}}`}`;
}

/** A symbol in TeX: what follows the first underscore is lowered. */
export function texSymbol(name: string, tex?: string): string {
  if (tex !== undefined) return tex;
  if (greek.has(name)) return `\\${name}`;
  const [base, below] = name.split("_") as [string, string?];
  return below === undefined ? base : `${base}_{${below}}`;
}
