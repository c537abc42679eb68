import type { TypesetFormula } from "@drawcord/page";
import { type FormulaTree, printQuantity, type Quantity, setTree, type TreeSetting } from "@drawcord/yarn";

/** What stands for the symbols of a formula. */
export interface Letters {
  /** A symbol, or the value that stands for it. */
  readonly symbol: (name: string) => TypesetFormula;
  /** A sum over a list. */
  readonly sum: (name: string) => TypesetFormula;
  /** Whether all factors have a sign between them. Default: only before a bracket or a number. */
  readonly signs?: boolean;
}

const greek: Readonly<Record<string, string>> = { pi: "π", phi: "φ", rho: "ρ" };

/**
 * The letters of a symbol: what follows its first underscore is lowered.
 * @example formulaText(symbolLetters("T_1")) // "T_1"
 */
export function symbolLetters(name: string): TypesetFormula {
  const [base, below] = name.split("_") as [string, string?];
  const letters = word(greek[base] ?? base, true);
  return below === undefined
    ? letters
    : { kind: "script", base: letters, below: word(below, !/\d/.test(below)) };
}

/**
 * A quantity as it stands in a formula, with its unit.
 * @example formulaText(quantityLetters({ value: 24, unit: "per inch", kind: "sett" })) // "24 per inch"
 */
export function quantityLetters(quantity: Quantity): TypesetFormula {
  const number = word(`${Number(quantity.value.toPrecision(6))}`, false);
  if (quantity.kind === "number") return number;
  const [, unit] = /^\S+ (.*)$/.exec(printQuantity(quantity))!;
  return row([number, word("\u2009", false), word(unit!, false)]);
}

const calls = {
  floor: ["⌊", "⌋"],
  ceil: ["⌈", "⌉"],
  round: ["⌊", "⌉"],
  max: ["(", ")"],
  min: ["(", ")"],
} as const;

const inType: Omit<TreeSetting<TypesetFormula>, keyof Letters> = {
  number: (value) => word(`${value}`, false),
  plus: (left, right) => row([left, operator("+"), right]),
  minus: (left, right) => row([left, operator("−"), right]),
  negative: (of) => row([operator("−"), of]),
  times: (left, right, sign) => row(sign ? [left, operator("·"), right] : [left, right]),
  over: (over, under) => ({ kind: "fraction", over, under }),
  power: (base, above) => ({ kind: "script", base, above }),
  root: (of) => ({ kind: "root", of }),
  call: (name, of) => {
    const [open, close] = calls[name];
    const inner = of.flatMap((one, i) => (i === 0 ? [one] : [operator(","), one]));
    const lead = name === "max" || name === "min" ? [word(name, false)] : [];
    return row([...lead, operator(open), ...inner, operator(close)]);
  },
  brackets: (inner) => row([operator("("), inner, operator(")")]),
  stacked: true,
};

/**
 * The tree of a formula set in type.
 * @example formulaText(typeset(["/", "n", "S"], { symbol: symbolLetters, sum: symbolLetters })) // "n / S"
 */
export function typeset(tree: FormulaTree, letters: Letters): TypesetFormula {
  const symbol = (name: string): TypesetFormula =>
    name === "pi" ? symbolLetters(name) : letters.symbol(name);
  return setTree(tree, { ...inType, ...letters, symbol });
}

/**
 * Items side by side.
 * @example formulaText(row([word("W", true), operator("="), word("8", false)])) // "W = 8"
 */
export function row(items: readonly TypesetFormula[]): TypesetFormula {
  const open = items.flatMap((item) => (item.kind === "row" ? item.items : [item]));
  return open.length === 1 ? open[0]! : { kind: "row", items: open };
}

/**
 * A word or a number.
 * @param slant whether it is a letter that stands for a value
 * @example formulaText(word("8", false)) // "8"
 */
export function word(text: string, slant: boolean): TypesetFormula {
  return { kind: "word", text, slant };
}

/**
 * A sign, a bracket or a comma.
 * @example formulaText(row([word("a", true), operator("+"), word("b", true)])) // "a + b"
 */
export function operator(text: string): TypesetFormula {
  return { kind: "operator", text };
}
