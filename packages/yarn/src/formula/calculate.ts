import { YarnError } from "../error.js";
import { type FormulaId, formulas } from "../formulas/registry.js";
import { evaluate, type MathValue, type Unit, unit } from "../math.js";
import { convert } from "../quantity/convert.js";
import { metricUnit, type Quantity, quantity } from "../quantity/units.js";
import { type Given, type Input, take } from "./input.js";
import { mathNames } from "./math-names.js";
import type { Formula, ResultSpec, SymbolSpec } from "./types.js";

/** A quantity with the formula and the values it was worked out from; what `explain` prints. */
export interface Result extends Quantity {
  readonly formula: FormulaId;
  readonly given: Readonly<Record<string, Given | readonly Given[]>>;
}

/**
 * Whether a quantity knows the formula that it came from.
 * @example isResult(tex("16/2 Ne")) // true
 */
export function isResult(value: Quantity): value is Result {
  return "formula" in value;
}

type Symbols<I extends FormulaId> = (typeof formulas)[I]["symbols"];
type Usual<S> = { [K in keyof S]: S[K] extends { usual: unknown } ? K : never }[keyof S];
type Value<S> = S extends { list: true } ? readonly Input[] : Input;

/** The values of a formula's symbols; those with a usual value may be left out. */
export type Values<I extends FormulaId> = {
  readonly [K in Exclude<keyof Symbols<I>, Usual<Symbols<I>>>]: Value<Symbols<I>[K]>;
} & { readonly [K in Usual<Symbols<I>>]?: Input | undefined };

/**
 * A formula worked out with its units. A quantity, its text (`"40 per inch"`) or, for a number, a number may be given; a
 * symbol left out takes its usual value, marked as assumed.
 * @returns the result in the formula's unit, with what it was worked out from
 * @throws {YarnError} `no-unit`, `wrong-kind`, `negative`, `zero`, `not-finite`, `not-whole`, `absurd` or `missing`, naming
 * the symbol
 * @example calculate("width-in-reed", { n: 564, S: "40 per inch" }).value // 358.14
 */
export function calculate<I extends FormulaId>(id: I, values: Values<I>): Result {
  const formula: Formula = formulas[id];
  const given: Record<string, Given | readonly Given[]> = {};
  const scope: Record<string, MathValue> = {};
  for (const [symbol, spec] of Object.entries(formula.symbols)) {
    const input = (values as Readonly<Record<string, Input | readonly Input[] | undefined>>)[symbol];
    const where = `${formula.title}: ${spec.meaning}`;
    if (Array.isArray(input)) {
      const taken = (input as readonly Input[]).map((one) => take(spec, one, where));
      if (taken.length === 0) throw new YarnError("missing", `${where} must be at least one`, { symbol });
      given[symbol] = taken;
      scope[symbol] = taken.map((one) => carried(spec, one));
    } else {
      const taken = take(spec, input as Input | undefined, where);
      given[symbol] = taken;
      scope[symbol] = carried(spec, taken);
    }
  }
  return {
    ...checked(formula, quantityOf(formula.result, evaluate(formula.expression, scope))),
    formula: id,
    given,
  };
}

/** What the expression sees of a quantity. */
function carried(spec: SymbolSpec, from: Quantity): number | Unit {
  if (spec.bare !== undefined) return convert(from, spec.bare).value;
  if (spec.kind === "number") return from.value;
  if (spec.kind === "share") return from.value / 100;
  return unit(from.value, mathNames[from.unit]!);
}

/** What the expression gave, in the unit of the result. */
function quantityOf(result: ResultSpec, found: number | Unit): Quantity {
  const wanted = result.unit ?? metricUnit[result.kind];
  if (typeof found !== "number") return quantity(found.toNumber(mathNames[wanted]!), wanted);
  if (result.bare !== undefined) return convert(quantity(found, result.bare), wanted);
  return quantity(result.kind === "share" ? found * 100 : found, wanted);
}

function checked(formula: Formula, found: Quantity): Quantity {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = formula.result;
  // A result that ought to be 0 may come out a rounding error below it.
  const value = least === 0 && found.value < 0 && found.value > -1e-6 ? 0 : found.value;
  if (!Number.isFinite(value)) {
    throw new YarnError(
      "not-finite",
      `${formula.title} comes out as ${value}; the values given do not go together`,
    );
  }
  if (value < least || value > most) {
    const limits = most === Number.POSITIVE_INFINITY ? `${least} or more` : `${least} to ${most}`;
    throw new YarnError(
      "absurd",
      `${formula.title} comes out as ${Number(value.toPrecision(4))} ${found.unit}; expected ${limits} ${found.unit}`,
      { value, least, ...(Number.isFinite(most) ? { most } : {}) },
    );
  }
  return { ...found, value };
}
