import { calculate, explain, type Formula, type FormulaId, formulas } from "@drawcord/yarn";
import type { TypedValues } from "./worked-values.js";

/**
 * The working of a formula with what was typed into its fields: a bare number, a quantity with its unit, or several parted by
 * semicolons; an empty field takes the usual value.
 * @param id of the formula
 * @param typed by symbol
 * @throws {YarnError} for what is missing or cannot be read
 */
export function workingOf(id: FormulaId, typed: TypedValues): string {
  const formula: Formula = formulas[id];
  const values = Object.entries(formula.symbols).flatMap(([symbol, { list }]) => {
    const text = (typed[symbol] ?? "").trim();
    if (text === "") return [];
    const parts = text.split(";").map((part) => numberOrText(part.trim()));
    return [[symbol, list === true ? parts : parts[0]] as const];
  });
  // The names and kinds of what was typed are checked by the formula itself.
  return explain(calculate(id, Object.fromEntries(values) as never)).text;
}

function numberOrText(text: string): number | string {
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : text;
}
