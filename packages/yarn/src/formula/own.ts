import { YarnError } from "../error.js";
import { kinds, type UnitName, units } from "../quantity/units.js";
import { dimensionOf, dimensions, isSame } from "./dimension.js";
import type { Input } from "./input.js";
import { symbolsOf } from "./tree.js";
import type { ReadFormula, SymbolSpec } from "./types.js";
import { type Result, result } from "./work-out.js";

/** A symbol of a formula of the user's own. */
export interface OwnSymbol {
  /** What it stands for, in a few words. */
  readonly meaning: string;
  /** A unit of its kind; the empty unit for a bare number. */
  readonly unit: UnitName;
  /** Whether the expression takes the bare number in that unit, as where a price is asked for 1 g. Default: it carries its unit. */
  readonly bare?: boolean;
}

/** A formula of the user's own, as it is written. */
export interface OwnFormula {
  /** What it works out, in a few words. */
  readonly title: string;
  /** In the language of mathjs: `m / (N h)`; a share stands for a fraction of 1. */
  readonly expression: string;
  /** What each symbol stands for, by its name in the expression. */
  readonly symbols: Readonly<Record<string, OwnSymbol>>;
  /** The letter of the result. Default: `x`. */
  readonly symbol?: string;
  /** The unit of the result. Default: a bare number. */
  readonly unit?: UnitName;
  /** Decimals to which the result is rounded where it is printed, 0 to 12. Default: 2. */
  readonly decimals?: number;
  /** Where it is from. Default: the user's own. */
  readonly source?: string;
}

/**
 * Reads a formula of the user's own. Only here mathjs is loaded, and of it only the parser: what it reads must be
 * arithmetic on the symbols given, and measure what the result's unit does.
 * @param own the formula as it is written, and what its letters stand for
 * @returns the formula, for `workOutOwn`
 * @throws {YarnError} `bad-formula` for an expression that cannot be read, that names a symbol not given or leaves one out,
 * or whose units do not go together
 * @example (await parseFormula({ title: "price", expression: "m c", symbols: { m: { meaning: "yarn", unit: "g", bare: true }, c: { meaning: "price of 1 g", unit: "" } } })).tree // ["*", "m", "c"]
 */
export async function parseFormula(own: OwnFormula): Promise<ReadFormula> {
  const { parseExpression } = await import("./parse-expression.js");
  const { decimals = 2, expression, source = "the user's own", symbol = "x", title, unit = "" } = own;
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 12) {
    throw new YarnError("bad-formula", `${title}: ${decimals} is not a number of decimals; expected 0 to 12`);
  }
  const tree = parseExpression(expression);
  const used = symbolsOf(tree);
  const given = Object.keys(own.symbols);
  const unknown = used.find((name) => !given.includes(name));
  if (unknown !== undefined) {
    throw new YarnError(
      "bad-formula",
      `${title}: "${unknown}" is not among its symbols; they are ${given.join(", ")}`,
    );
  }
  const idle = given.find((name) => !used.includes(name));
  if (idle !== undefined) {
    throw new YarnError("bad-formula", `${title}: its symbol "${idle}" does not stand in ${expression}`);
  }
  const lists = new Set(summed(tree));
  const symbols = Object.fromEntries(
    Object.entries(own.symbols).map(([name, spec]): [string, SymbolSpec] => [
      name,
      {
        meaning: spec.meaning,
        kind: units[spec.unit].kind,
        ...(spec.bare === true && spec.unit !== "" ? { bare: spec.unit } : {}),
        ...(lists.has(name) ? { list: true } : {}),
      },
    ]),
  );
  const { kind } = units[unit];
  const measured = dimensionOf(
    tree,
    Object.fromEntries(
      Object.entries(symbols).map(([name, spec]) => [
        name,
        dimensions[spec.bare === undefined ? spec.kind : "number"],
      ]),
    ),
  );
  if (!isSame(measured, dimensions[kind])) {
    throw new YarnError(
      "bad-formula",
      `${title}: ${expression} does not measure ${kinds[kind].asked.split(" such as ")[0]}; see the units of its symbols`,
    );
  }
  return { title, expression, symbols, result: { symbol, kind, unit, decimals }, source, tree };
}

/** The symbols over which a tree sums. */
function summed(tree: ReadFormula["tree"]): string[] {
  if (typeof tree !== "object") return [];
  if (tree[0] === "sum") return [tree[1]];
  return tree.slice(1).flatMap((part) => summed(part as ReadFormula["tree"]));
}

/**
 * A formula of the user's own worked out; `explain` prints its working as that of any other.
 * @param formula as `parseFormula` read it
 * @param values what its symbols stand for, in any unit of their kind
 * @throws {YarnError} as `calculate`
 * @example workOutOwn(await parseFormula({ title: "thread", expression: "n L", symbols: { n: { meaning: "ends", unit: "ends" }, L: { meaning: "warp", unit: "m" } }, unit: "m" }), { n: 12, L: "3 m" }).value // 36
 */
export function workOutOwn(
  formula: ReadFormula,
  values: Readonly<Record<string, Input | readonly Input[]>>,
): Result {
  return result(formula, values);
}
