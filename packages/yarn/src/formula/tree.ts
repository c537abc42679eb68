import { roundHalf } from "../quantity/round.js";

/**
 * A formula's expression as data: a number, a symbol (`pi` stands for itself), or an operation and what it is done to.
 * Evaluation, text, TeX and typesetting are walks over it.
 */
export type FormulaTree =
  | number
  | string
  | readonly ["+" | "-" | "*" | "/" | "^" | "max" | "min", FormulaTree, FormulaTree]
  | readonly ["negative" | "sqrt" | "round" | "floor" | "ceil", FormulaTree]
  | readonly ["sum", string];

/** What the symbols stand for: numbers, and lists for those that are summed. */
export type Scope = Readonly<Record<string, number | readonly number[]>>;

/**
 * What a tree gives for the values of its symbols. A number that is whole but for rounding on the way is not rounded up or
 * down to the next: 3 packages of 100 g hold 300 g.
 * @param tree whose symbols all stand in `scope`
 * @param scope bare numbers, in units that go together
 * @example evaluate(["/", "n", "S"], { n: 540, S: 10 }) // 54
 */
export function evaluate(tree: FormulaTree, scope: Scope): number {
  if (typeof tree === "number") return tree;
  if (typeof tree === "string") return tree === "pi" ? Math.PI : (scope[tree] as number);
  const of = (at: 1 | 2): number => evaluate(tree[at] as FormulaTree, scope);
  switch (tree[0]) {
    case "+":
      return of(1) + of(2);
    case "-":
      return of(1) - of(2);
    case "*":
      return of(1) * of(2);
    case "/":
      return of(1) / of(2);
    case "^":
      return of(1) ** of(2);
    case "max":
      return Math.max(of(1), of(2));
    case "min":
      return Math.min(of(1), of(2));
    case "negative":
      return -of(1);
    case "sqrt":
      return Math.sqrt(of(1));
    case "round":
      return roundHalf(of(1), 0);
    case "floor":
      return Math.floor(nearlyWhole(of(1)));
    case "ceil":
      return Math.ceil(nearlyWhole(of(1)));
    case "sum":
      return (scope[tree[1]] as readonly number[]).reduce((sum, one) => sum + one, 0);
  }
}

/** A number as it is, or the whole number from which only rounding keeps it. */
function nearlyWhole(value: number): number {
  const whole = Math.round(value);
  return Math.abs(value - whole) <= 1e-9 * Math.max(1, Math.abs(value)) ? whole : value;
}

/**
 * The symbols of a tree, each once, in the order in which they stand.
 * @example symbolsOf(["/", ["sum", "T_i"], ["*", "n", "pi"]]) // ["T_i", "n"]
 */
export function symbolsOf(tree: FormulaTree): string[] {
  if (typeof tree === "number") return [];
  if (typeof tree === "string") return tree === "pi" ? [] : [tree];
  return [...new Set(tree.slice(1).flatMap((part) => symbolsOf(part as FormulaTree)))];
}
