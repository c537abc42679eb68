import { escapeText } from "../drawing/escape.js";
import type { TypesetFormula } from "./types.js";

/**
 * A formula as presentation MathML (W3C MathML Core), which browsers set and screen readers read.
 * @param formula the formula as a tree
 * @example toMathml({ kind: "word", text: "n", slant: true }) // '<math displaystyle="true"><mi>n</mi></math>'
 */
export function toMathml(formula: TypesetFormula): string {
  return `<math displaystyle="true">${element(formula)}</math>`;
}

function element(formula: TypesetFormula): string {
  switch (formula.kind) {
    case "word":
      if (/^\d/.test(formula.text)) return `<mn>${escapeText(formula.text)}</mn>`;
      if (formula.text.trim() === "") return '<mspace width="0.17em"></mspace>';
      return formula.slant
        ? `<mi>${escapeText(formula.text)}</mi>`
        : `<mi mathvariant="normal">${escapeText(formula.text)}</mi>`;
    case "operator":
      return `<mo>${escapeText(formula.text)}</mo>`;
    case "row":
      return `<mrow>${formula.items.map(element).join("")}</mrow>`;
    case "fraction":
      return `<mfrac>${element(formula.over)}${element(formula.under)}</mfrac>`;
    case "root":
      return `<msqrt>${element(formula.of)}</msqrt>`;
    case "script": {
      const base = element(formula.base);
      if (formula.above === undefined) return `<msub>${base}${element(formula.below!)}</msub>`;
      if (formula.below === undefined) return `<msup>${base}${element(formula.above)}</msup>`;
      return `<msubsup>${base}${element(formula.below)}${element(formula.above)}</msubsup>`;
    }
  }
}
