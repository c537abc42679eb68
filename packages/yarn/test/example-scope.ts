import type { TreeSetting } from "../src/index.js";
import { plain } from "./weaves.js";

/** A formula put down as text, in the fewest words. */
const asText: TreeSetting<string> = {
  number: String,
  symbol: (name) => name,
  sum: (name) => `sum(${name})`,
  plus: (left, right) => `${left} + ${right}`,
  minus: (left, right) => `${left} - ${right}`,
  negative: (of) => `-${of}`,
  times: (left, right, sign) => `${left}${sign ? " * " : " "}${right}`,
  over: (above, below) => `${above} / ${below}`,
  power: (base, exponent) => `${base}^${exponent}`,
  root: (of) => `sqrt(${of})`,
  call: (name, of) => `${name}(${of.join(", ")})`,
  brackets: (inner) => `(${inner})`,
  stacked: false,
};

/** What the examples of the docstrings may name besides exports. */
export const scope = { asText, plain };
