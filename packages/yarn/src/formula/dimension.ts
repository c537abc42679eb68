import { YarnError } from "../error.js";
import type { Kind } from "../quantity/units.js";
import type { FormulaTree } from "./tree.js";

/** Powers of length and of weight: a sett is a length to the power of -1. */
export interface Dimension {
  readonly length: number;
  readonly mass: number;
}

/** What each kind of quantity measures. */
export const dimensions: Readonly<Record<Kind, Dimension>> = {
  number: { length: 0, mass: 0 },
  share: { length: 0, mass: 0 },
  length: { length: 1, mass: 0 },
  mass: { length: 0, mass: 1 },
  sett: { length: -1, mass: 0 },
  "linear-density": { length: -1, mass: 1 },
  "area-weight": { length: -2, mass: 1 },
  density: { length: -3, mass: 1 },
};

const bare = dimensions.number;

/**
 * What a formula measures.
 * @param tree of the formula
 * @param symbols the dimension of each of its symbols
 * @throws {YarnError} `bad-formula` where unlike things are added or compared, or a function is asked for what has a unit
 * @example dimensionOf(["/", "n", "S"], { n: dimensions.number, S: dimensions.sett }) // { length: 1, mass: 0 }
 */
export function dimensionOf(tree: FormulaTree, symbols: Readonly<Record<string, Dimension>>): Dimension {
  if (typeof tree === "number") return bare;
  if (typeof tree === "string") return tree === "pi" ? bare : symbols[tree]!;
  const of = (part: FormulaTree): Dimension => dimensionOf(part, symbols);
  switch (tree[0]) {
    case "*":
      return plus(of(tree[1]), of(tree[2]), 1);
    case "/":
      return plus(of(tree[1]), of(tree[2]), -1);
    case "^": {
      if (!isSame(of(tree[2]), bare)) throw refuse("an exponent has a unit");
      const base = of(tree[1]);
      if (isSame(base, bare)) return bare;
      if (typeof tree[2] !== "number")
        throw refuse("what has a unit is raised to a power that is not a number");
      return plus(bare, base, tree[2]);
    }
    case "sqrt":
      return plus(bare, of(tree[1]), 0.5);
    case "negative":
      return of(tree[1]);
    case "sum":
      return symbols[tree[1]]!;
    case "round":
    case "floor":
    case "ceil":
      if (!isSame(of(tree[1]), bare)) throw refuse(`${tree[0]} of what has a unit`);
      return bare;
    default: {
      const [left, right] = [of(tree[1]), of(tree[2])];
      // Nothing is nothing in any unit.
      if (tree[1] === 0) return right;
      if (tree[2] === 0 || isSame(left, right)) return left;
      throw refuse(`"${tree[0]}" of things of unlike kinds`);
    }
  }
}

/** Whether two dimensions are the same. */
export function isSame(one: Dimension, other: Dimension): boolean {
  return one.length === other.length && one.mass === other.mass;
}

function plus(one: Dimension, other: Dimension, times: number): Dimension {
  // Not -0, which is another number to who compares.
  return { length: one.length + times * other.length || 0, mass: one.mass + times * other.mass || 0 };
}

function refuse(what: string): YarnError {
  return new YarnError("bad-formula", `${what}; its sides must measure the same`);
}
