import { nearest } from "@drawcord/base";
import { type FibreName, fibres } from "../count/fibres.js";
import { countIn, tex, type YarnInput } from "../count/tex.js";
import { YarnError } from "../error.js";
import { calculate } from "../formula/calculate.js";
import type { Input } from "../formula/input.js";
import type { Result } from "../formula/work-out.js";

/** What the yarn is made of; where it is not known, the constant can be given. */
export interface RootOptions {
  /** Fibre, for its constant. */
  readonly fibre?: string;
  /** Fibre constant of the root rule. Default: that of `fibre`, or 0.90, shown as assumed. */
  readonly k?: number;
}

/** What fills the yarn. */
export interface PackingOptions {
  /** Share of the yarn's section that is fibre. Default: 60 %, shown as assumed. */
  readonly packing?: Input;
}

/** The entry of a fibre by its name. */
function fibreNamed(name: string): FibreName {
  if (Object.hasOwn(fibres, name)) return name as FibreName;
  const known = Object.keys(fibres);
  const like = nearest(name, known);
  const hint = like === undefined ? `known are ${known.join(", ")}` : `is it ${like}?`;
  throw new YarnError("unknown-fibre", `no fibre is called "${name}"; ${hint}`, { fibre: name });
}

/**
 * Yarns that lie side by side in a width, by the root rule.
 * @param yarn the yarn by its count, or in tex
 * @param options the fibre, or the constant k in its place
 * @throws {YarnError} as `tex`; `unknown-fibre` (names the nearest)
 * @example convert(diametersByRoot("20/2 Ne", { k: 0.9 }), "per inch").value // 82.49
 */
export function diametersByRoot(yarn: YarnInput, options: RootOptions = {}): Result {
  const { fibre } = options;
  const k = options.k ?? (fibre === undefined ? undefined : fibres[fibreNamed(fibre)].k);
  return calculate("diameters-by-root", { k, Y: countIn(yarn, "yards-a-pound") });
}

/**
 * Diameter of a cotton yarn by Peirce.
 * @param yarn the yarn by its count, or in tex
 * @example diameterByPeirce("16 Ne").value // 0.22679
 */
export function diameterByPeirce(yarn: YarnInput): Result {
  return calculate("diameter-by-peirce", { N: countIn(yarn, "cotton") });
}

/**
 * Diameter of a yarn from the density of its fibre.
 * @param yarn the yarn by its count, or in tex
 * @param density of the fibre, or the fibre's name
 * @param options the share of the yarn that is fibre
 * @throws {YarnError} as `tex`; `unknown-fibre` (names the nearest)
 * @example diameterByPacking("73.8 tex", "cotton").value // 0.321
 */
export function diameterByPacking(yarn: YarnInput, density: Input, options: PackingOptions = {}): Result {
  const rho =
    typeof density === "string" && !/\d/.test(density) ? fibres[fibreNamed(density)].density : density;
  return calculate("diameter-by-packing", { T: tex(yarn), rho, phi: options.packing });
}

/**
 * Wraps side by side of a yarn of a diameter.
 * @param diameter how thick the yarn is
 * @example convert(wraps("0.5 mm"), "per inch").value // 50.8
 */
export function wraps(diameter: Input): Result {
  return calculate("wraps-of-diameter", { d: diameter });
}
