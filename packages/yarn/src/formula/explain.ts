import { printQuantity } from "../quantity/print.js";
import { roundHalf } from "../quantity/round.js";
import type { Quantity } from "../quantity/units.js";
import { formulaOf, isResult } from "./calculate.js";
import { imperial } from "./imperial.js";
import type { Given } from "./input.js";
import { printTex, printText } from "./print.js";
import { figures, texQuantity, texSymbol } from "./tex.js";
import type { ReadFormula } from "./types.js";
import type { Result } from "./work-out.js";

/** A value that went into a working. */
export interface WorkingValue {
  /** The letter as it stands in the expression. */
  readonly symbol: string;
  /** What it stands for. */
  readonly meaning: string;
  /** One value, or those of a list. */
  readonly values: readonly Quantity[];
  /** Why it was taken, where nothing was given. */
  readonly assumed?: string;
  /** The formula that it came from, where it was worked out too. */
  readonly from?: string;
}

/** The working of a result as data. */
export interface Working {
  /** The id of the formula; the title of one of the user's own. */
  readonly formula: string;
  /** What it works out, in a few words. */
  readonly title: string;
  /** The letter of the result. */
  readonly symbol: string;
  /** The formula as it is written. */
  readonly expression: string;
  /** Every value that went in, in the order of the letters. */
  readonly values: readonly WorkingValue[];
  /** As it was worked out, without rounding. */
  readonly result: Quantity;
  /** Decimals to which it is rounded. */
  readonly decimals: number;
  /** As it is printed. */
  readonly rounded: Quantity;
  /** Where the formula is from. */
  readonly source: string;
  /** Where it holds and what it leaves out; left out where nothing is to be said. */
  readonly validity?: string;
}

/** The working of a result: formula, substitution with units, result, rounding and source. */
export interface Explanation {
  /** Formula, substitution, result and source, a line each. */
  readonly text: string;
  /** The same for a display that sets TeX. */
  readonly tex: string;
  /** The same as data. */
  readonly data: Working;
}

/**
 * The working of one result.
 * @param result a number that was worked out
 * @returns as plain text of several lines, as TeX for a display, and as data
 * @example explain(calculate("width-in-reed", { n: 540, S: "10 per cm" })).text.split("\n")[2] // "  W = 540 / (10 per cm) = 540 mm = 21.2598 in"
 */
export function explain(result: Result): Explanation {
  const formula = formulaOf(result);
  return { text: text(formula, result), tex: tex(formula, result), data: data(formula, result) };
}

/**
 * A result and all results that it was worked out from, each once and before the one that uses it.
 * @param result a number that was worked out
 * @example steps(calculate("width-in-reed", { n: 540, S: "10 per cm" })).length // 1
 */
export function steps(result: Result): Result[] {
  const found = new Set<Result>();
  const visit = (one: Result): void => {
    for (const given of Object.values(one.given))
      for (const input of listOf(given)) if (isResult(input)) visit(input);
    found.add(one);
  };
  visit(result);
  return [...found];
}

/**
 * A result rounded to the decimals at which it is printed.
 * @param result a number that was worked out
 * @example rounded(tex("20/2 Ne")).value // 59.05
 */
export function rounded(result: Result): Quantity {
  const { decimals } = formulaOf(result).result;
  return { value: roundHalf(result.value, decimals), unit: result.unit, kind: result.kind };
}

function listOf(given: Given | readonly Given[]): readonly Given[] {
  return Array.isArray(given) ? given : [given as Given];
}

/** A formula by its id, one of the user's own by its title. */
function nameOf({ formula }: Result): string {
  return typeof formula === "string" ? formula : formula.title;
}

function data(formula: ReadFormula, result: Result): Working {
  const values = Object.entries(formula.symbols).map(([symbol, { meaning }]): WorkingValue => {
    const list = listOf(result.given[symbol]!);
    const [first] = list as readonly [Given];
    return {
      symbol,
      meaning,
      values: list.map(({ value, unit, kind }) => ({ value, unit, kind })),
      ...(first.assumed === undefined ? {} : { assumed: first.assumed }),
      ...(isResult(first) ? { from: nameOf(first) } : {}),
    };
  });
  return {
    formula: nameOf(result),
    title: formula.title,
    symbol: formula.result.symbol,
    expression: formula.expression,
    values,
    result: { value: result.value, unit: result.unit, kind: result.kind },
    decimals: formula.result.decimals,
    rounded: rounded(result),
    source: formula.source,
    ...(formula.validity === undefined ? {} : { validity: formula.validity }),
  };
}

function text(formula: ReadFormula, result: Result): string {
  const printed = (given: Given): string =>
    given.kind === "number" ? figures(given.value) : `(${written(given)})`;
  const valuesOf = (symbol: string) => listOf(result.given[symbol] ?? []).map(printed);
  const general = printText(formula.tree, { symbol: (name) => name, sum: (name) => `sum(${name})` });
  const substituted = printText(formula.tree, {
    symbol: (name) => valuesOf(name)[0] ?? name,
    sum: (name) => `(${valuesOf(name).join(" + ")})`,
    signs: true,
  });
  const other = imperial(result);
  const { symbol, decimals } = formula.result;
  const lines = [
    formula.title,
    `  ${symbol} = ${general}`,
    `  ${symbol} = ${substituted} = ${written(result)}${other === undefined ? "" : ` = ${written(other)}`}`,
    `  to ${precision(decimals)}: ${printQuantity(rounded(result))}`,
    ...Object.entries(formula.symbols).map(([name, spec]) => {
      const list = listOf(result.given[name]!);
      const why = list[0]?.assumed;
      return `  ${name} = ${list.map(written).join(", ")}: ${spec.meaning}${why === undefined ? "" : ` (assumed: ${why})`}`;
    }),
    `  source: ${formula.source}`,
  ];
  if (formula.validity !== undefined) lines.push(`  holds for: ${formula.validity}`);
  return lines.join("\n");
}

function precision(decimals: number): string {
  if (decimals === 0) return "the nearest whole number";
  return decimals === 1 ? "1 decimal" : `${decimals} decimals`;
}

function written(from: Quantity): string {
  return from.kind === "number"
    ? figures(from.value)
    : printQuantity({ ...from, value: Number(figures(from.value)) });
}

function tex(formula: ReadFormula, result: Result): string {
  const symbolOf = (name: string): string => texSymbol(name, formula.symbols[name]?.tex);
  const valuesOf = (name: string) => listOf(result.given[name] ?? []).map(texQuantity);
  const general = printTex(formula.tree, { symbol: symbolOf, sum: (name) => `\\sum ${symbolOf(name)}` });
  const substituted = printTex(formula.tree, {
    symbol: (name) => valuesOf(name)[0] ?? symbolOf(name),
    sum: (name) => `\\left(${valuesOf(name).join(" + ")}\\right)`,
    signs: true,
  });
  const left = texSymbol(formula.result.symbol, formula.result.tex);
  const near = rounded(result).value === result.value ? "=" : "\\approx";
  return `${left} = ${general} = ${substituted} ${near} ${texQuantity(rounded(result))}`;
}
