import { listed } from "@drawcord/base";
import { YarnError } from "../error.js";
import type { FormulaId } from "../formulas/typed.js";
import { convert } from "../quantity/convert.js";
import { printQuantity } from "../quantity/print.js";
import { kinds, type Quantity, quantity } from "../quantity/units.js";
import { type Given, type Input, take } from "./input.js";
import { evaluate, type FormulaTree } from "./tree.js";
import type { Formula, FormulaSet, ReadFormula, ResultSpec, SymbolSpec } from "./types.js";

/** A quantity with the formula and the values it was worked out from; what `explain` prints. */
export interface Result extends Quantity {
  /** One of the package by its id, or a formula of the user's own. */
  readonly formula: FormulaId | ReadFormula;
  /** What went in, by the letters of the formula. */
  readonly given: Readonly<Record<string, Given | readonly Given[]>>;
}

type Usual<S> = { [K in keyof S]: S[K] extends { usual: unknown } ? K : never }[keyof S];
type Value<S> = S extends { list: true } ? readonly Input[] : Input;

/** The values of a formula's symbols; those with a usual value may be left out. */
export type ValuesOf<S> = {
  readonly [K in Exclude<keyof S, Usual<S>>]: Value<S[K]>;
} & { readonly [K in Usual<S>]?: Input | undefined };

/** What the symbols of a formula are given, by name. */
type Inputs = Readonly<Record<string, Input | readonly Input[] | undefined>>;

/**
 * A formula of one set worked out, so that who needs few formulas loads few.
 * @throws {YarnError} as `calculate`
 */
export function workOut<F extends FormulaSet, I extends keyof F & FormulaId>(
  set: F,
  trees: Readonly<Record<I, FormulaTree>>,
  id: I,
  values: ValuesOf<F[I]["symbols"]>,
): Result {
  return { ...result({ ...set[id]!, tree: trees[id] }, values as Inputs), formula: id };
}

/**
 * A formula of any origin worked out.
 * @throws {YarnError} as `calculate`
 */
export function result(formula: ReadFormula, values: Inputs): Result {
  const given: Record<string, Given | readonly Given[]> = {};
  const scope: Record<string, number | readonly number[]> = {};
  for (const [symbol, spec] of Object.entries(formula.symbols)) {
    const input = values[symbol];
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
    ...checked(formula, quantityOf(formula.result, evaluate(formula.tree, scope)), given),
    formula,
    given,
  };
}

/** What the expression sees of a quantity: its bare number where that is asked for, else in millimetres and grams. */
function carried(spec: SymbolSpec, from: Quantity): number {
  if (spec.bare !== undefined) return convert(from, spec.bare).value;
  const { metric, carried: one } = kinds[spec.kind];
  // Divided where that is exact: a hundredth is not a number of the machine.
  return spec.kind === "share" ? from.value / 100 : convert(from, metric).value * one;
}

/** What the expression gave, in the unit of the result. */
function quantityOf(spec: ResultSpec, found: number): Quantity {
  const { metric, carried: one } = kinds[spec.kind];
  const wanted = spec.unit ?? metric;
  if (spec.bare !== undefined) return convert(quantity(found, spec.bare), wanted);
  return convert(quantity(spec.kind === "share" ? found * 100 : found / one, metric), wanted);
}

function checked(formula: Formula, found: Quantity, given: Result["given"]): Quantity {
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
    // More was taken off than there is: by which number, only the weaver can tell.
    const why = value < 0 ? `; it follows from ${namedIn(formula, given)}` : "";
    throw new YarnError(
      "absurd",
      `${formula.title} comes out as ${Number(value.toPrecision(4))} ${found.unit}; expected ${limits} ${found.unit}${why}`,
      { value, least, ...(Number.isFinite(most) ? { most } : {}) },
    );
  }
  return { ...found, value };
}

/** What went into a formula, by its meaning. */
function namedIn({ symbols }: Formula, given: Result["given"]): string {
  const named = Object.entries(symbols).flatMap(([symbol, { meaning }]) => {
    const [first, ...others] = [given[symbol] ?? []].flat();
    return first === undefined
      ? []
      : [`${meaning} ${printQuantity(first, { decimals: 2 })}${others.length === 0 ? "" : " and more"}`];
  });
  return listed(named);
}
