import { setTree, type TreeSetting } from "./set-tree.js";
import { texSymbol } from "./tex.js";
import type { FormulaTree } from "./tree.js";

/** What stands for the symbols. */
export interface Printer {
  /** A symbol, or the value that stands for it. */
  readonly symbol: (name: string) => string;
  /** A sum over a list. */
  readonly sum: (name: string) => string;
  /** Whether all factors have a sign between them. Default: only before a bracket or a number. */
  readonly signs?: boolean;
}

const text: Omit<TreeSetting<string>, keyof Printer> = {
  number: String,
  plus: (left, right) => `${left} + ${right}`,
  minus: (left, right) => `${left} - ${right}`,
  negative: (of) => `-${of}`,
  times: (left, right, sign) => `${left}${sign ? " × " : " "}${right}`,
  over: (above, below) => `${above} / ${below}`,
  power: (base, exponent) => `${base}^${exponent}`,
  root: (of) => `sqrt(${of})`,
  call: (name, of) => `${name}(${of.join(", ")})`,
  brackets: (inner) => `(${inner})`,
  stacked: false,
};

/**
 * A tree as a line of text.
 * @example printText(["/", "m", ["*", "N", "h"]], { symbol: (name) => name, sum: (name) => `sum(${name})` }) // "m / (N h)"
 */
export function printText(tree: FormulaTree, printer: Printer): string {
  return setTree(tree, { ...text, ...printer });
}

/** What stands on either side of the arguments of a function in TeX. */
const texCalls = {
  floor: ["\\left\\lfloor ", "\\right\\rfloor"],
  ceil: ["\\left\\lceil ", "\\right\\rceil"],
  round: ["\\left\\lfloor ", "\\right\\rceil"],
  max: ["\\max\\left(", "\\right)"],
  min: ["\\min\\left(", "\\right)"],
} as const;

const tex: Omit<TreeSetting<string>, keyof Printer> = {
  ...text,
  times: (left, right, sign) => `${left}${sign ? " \\cdot " : "~"}${right}`,
  over: (above, below) => `\\frac{${above}}{${below}}`,
  power: (base, exponent) => `${base}^{${exponent}}`,
  root: (of) => `\\sqrt{${of}}`,
  call: (name, of) => `${texCalls[name][0]}${of.join(", ")}${texCalls[name][1]}`,
  brackets: (inner) => `\\left(${inner}\\right)`,
  stacked: true,
};

/**
 * A tree in TeX.
 * @example printTex(["/", "n", "S"], { symbol: (name) => name, sum: (name) => name }) // "\\frac{n}{S}"
 */
export function printTex(tree: FormulaTree, printer: Printer): string {
  const symbol = (name: string): string => (name === "pi" ? texSymbol(name) : printer.symbol(name));
  return setTree(tree, { ...tex, ...printer, symbol });
}
