import type { FormulaTree } from "./tree.js";

/** How the parts of a formula are put down: as text, as TeX, or as boxes of type. */
export interface TreeSetting<T> {
  /**
   * A number that stands in the formula.
   * @param value as it stands there
   */
  readonly number: (value: number) => T;
  /**
   * A symbol, or the value that stands for it; `pi` is one.
   * @param name the letter
   */
  readonly symbol: (name: string) => T;
  /**
   * A sum over a list.
   * @param name the letter of the list
   */
  readonly sum: (name: string) => T;
  /**
   * One added to another.
   * @param left the first
   * @param right the second
   */
  readonly plus: (left: T, right: T) => T;
  /**
   * One less another.
   * @param left what is taken from
   * @param right what is taken away
   */
  readonly minus: (left: T, right: T) => T;
  /**
   * The same below zero.
   * @param of what is turned
   */
  readonly negative: (of: T) => T;
  /**
   * Factors side by side, with a sign between them or without.
   * @param left the first
   * @param right the second
   * @param sign whether a sign stands between them
   */
  readonly times: (left: T, right: T, sign: boolean) => T;
  /**
   * A fraction.
   * @param above what stands over the line
   * @param below what stands under it
   */
  readonly over: (above: T, below: T) => T;
  /**
   * A power.
   * @param base what is raised
   * @param exponent to which power
   */
  readonly power: (base: T, exponent: T) => T;
  /**
   * A square root.
   * @param of what stands under it
   */
  readonly root: (of: T) => T;
  /**
   * A function of one value or two.
   * @param name which function
   * @param of its values, in their order
   */
  readonly call: (name: "round" | "floor" | "ceil" | "max" | "min", of: readonly T[]) => T;
  /**
   * What is held together by brackets.
   * @param inner what stands inside
   */
  readonly brackets: (inner: T) => T;
  /** Whether a fraction is set one above the other and holds together by itself. */
  readonly stacked: boolean;
  /** Whether all factors have a sign between them. Default: only before a bracket or a number. */
  readonly signs?: boolean;
}

/** How tightly an operation binds; what is not here needs no brackets. */
const binding: Readonly<Record<string, number>> = { "+": 1, "-": 1, "*": 2, "/": 2, negative: 3, "^": 4 };

function bindingOf(tree: FormulaTree): number {
  return typeof tree === "object" ? (binding[tree[0]] ?? 5) : 5;
}

/** Whether a factor begins with a bracket or a digit, which want a sign before them. */
function wantsSign(factor: FormulaTree): boolean {
  if (typeof factor !== "object") return typeof factor === "number";
  if (factor[0] === "^" || factor[0] === "*") return bindingOf(factor[1]) < 5 || wantsSign(factor[1]);
  return bindingOf(factor) < 5;
}

/**
 * A tree put down in a setting, with the brackets and signs that it needs to be read as it is worked out.
 * @param tree of a formula
 * @param setting what to make of each part
 * @example setTree(["/", "m", ["*", "N", "h"]], asText) // "m / (N h)"
 */
export function setTree<T>(tree: FormulaTree, setting: TreeSetting<T>): T {
  const set = (part: FormulaTree): T => setTree(part, setting);
  const isStacked = (part: FormulaTree): boolean =>
    setting.stacked && typeof part === "object" && (part[0] === "/" || part[0] === "sqrt");
  /** In brackets where it binds less tightly than what it stands in. */
  const within = (part: FormulaTree, least: number): T =>
    bindingOf(part) < least && !isStacked(part) ? setting.brackets(set(part)) : set(part);
  if (typeof tree === "number") return setting.number(tree);
  if (typeof tree === "string") return setting.symbol(tree);
  switch (tree[0]) {
    case "+":
      return setting.plus(within(tree[1], 1), within(tree[2], 2));
    case "-":
      return setting.minus(within(tree[1], 1), within(tree[2], 2));
    case "*": {
      // A quotient before a factor is bracketed too: what stands after it would be read as below.
      const divided = typeof tree[1] === "object" && tree[1][0] === "/";
      const sign = setting.signs === true || wantsSign(tree[2]);
      const product = typeof tree[2] === "object" && tree[2][0] === "*";
      return setting.times(within(tree[1], divided ? 3 : 2), within(tree[2], product ? 2 : 3), sign);
    }
    case "/":
      return setting.stacked
        ? setting.over(set(tree[1]), set(tree[2]))
        : setting.over(within(tree[1], 2), within(tree[2], 3));
    case "^": {
      const base = typeof tree[1] === "object" ? setting.brackets(set(tree[1])) : set(tree[1]);
      return setting.power(base, setting.stacked ? set(tree[2]) : within(tree[2], 5));
    }
    case "negative":
      return setting.negative(within(tree[1], 3));
    case "sqrt":
      return setting.root(set(tree[1]));
    case "sum":
      return setting.sum(tree[1]);
    case "max":
    case "min":
      return setting.call(tree[0], [set(tree[1]), set(tree[2])]);
    default:
      return setting.call(tree[0], [set(tree[1])]);
  }
}
