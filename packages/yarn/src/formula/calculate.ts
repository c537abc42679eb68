import { formulas, trees } from "../formulas/registry.js";
import { type FormulaId, typedFormulas } from "../formulas/typed.js";
import type { Quantity } from "../quantity/units.js";
import type { ReadFormula } from "./types.js";
import { type Result, type ValuesOf, workOut } from "./work-out.js";

/** The values of a formula's symbols, by its id; those with a usual value may be left out. */
export type Values<I extends FormulaId> = ValuesOf<(typeof typedFormulas)[I]["symbols"]>;

/**
 * A formula worked out with its units. A quantity, its text (`"12 per cm"`) or, for a number, a number may be given; a
 * symbol left out takes its usual value, marked as assumed.
 * @param id of a formula of this package
 * @param values what its symbols stand for, in any unit of their kind
 * @returns the result in the formula's unit, with what it was worked out from
 * @throws {YarnError} `no-unit`, `wrong-kind`, `negative`, `zero`, `not-finite`, `not-whole`, `absurd` or `missing`, naming
 * the symbol
 * @example calculate("width-in-reed", { n: 540, S: "10 per cm" }).value // 540
 */
export function calculate<I extends FormulaId>(id: I, values: Values<I>): Result {
  return workOut(typedFormulas, trees, id, values);
}

/**
 * Whether a quantity knows the formula that it came from.
 * @param value a quantity of any origin
 * @example isResult(tex("20/2 Ne")) // true
 */
export function isResult(value: Quantity): value is Result {
  return "formula" in value;
}

/**
 * The formula that a result came from, its expression read.
 * @param result what `calculate` or `workOutOwn` gave, or a function that calls them
 * @example formulaOf(tex("20/2 Ne")).tree // ["/", ["*", "n", "T_1"], ["-", 1, "c"]]
 */
export function formulaOf({ formula }: Result): ReadFormula {
  return typeof formula === "string" ? { ...formulas[formula], tree: trees[formula] } : formula;
}
