import type { TypesetFormula } from "./types.js";

/**
 * A formula on one line, for where nothing can be set above or below another.
 * @param formula the formula as a tree
 * @example formulaText({ kind: "root", of: { kind: "word", text: "Y", slant: true } }) // "√Y"
 */
export function formulaText(formula: TypesetFormula): string {
  switch (formula.kind) {
    case "word":
      return formula.text.trim() === "" ? " " : formula.text;
    case "operator":
      if (formula.text === ",") return ", ";
      return /^[()⌈⌉⌊⌋/]$/.test(formula.text) ? formula.text : ` ${formula.text} `;
    case "row":
      return spaced(formula.items);
    case "fraction":
      return `${bracketed(formula.over)} / ${bracketed(formula.under)}`;
    case "root":
      return `√${bracketed(formula.of)}`;
    case "script": {
      const below = formula.below === undefined ? "" : `_${bracketed(formula.below)}`;
      const above = formula.above === undefined ? "" : `^${bracketed(formula.above)}`;
      return `${bracketed(formula.base)}${below}${above}`;
    }
  }
}

/** Neighbours that are multiplied without a sign keep a blank between them. */
function spaced(items: readonly TypesetFormula[]): string {
  let text = "";
  for (const [i, item] of items.entries()) {
    const before = items[i - 1];
    const apart =
      item.kind !== "operator" && before !== undefined && endsFactor(before) && !text.endsWith(" ");
    const sign = item.kind === "operator" && (before === undefined || text.endsWith("("));
    text += (apart ? " " : "") + (sign ? item.text : formulaText(item));
  }
  return text.replace(/ {2,}/g, " ").trim();
}

function endsFactor(item: TypesetFormula): boolean {
  return item.kind !== "operator" || /^[)⌉⌋]$/.test(item.text);
}

function bracketed(formula: TypesetFormula): string {
  const text = formulaText(formula);
  return formula.kind === "word" || formula.kind === "script" || isBracketed(text) ? text : `(${text})`;
}

/** Whether the first bracket closes at the very end. */
function isBracketed(text: string): boolean {
  let open = 0;
  for (const [i, char] of [...text].entries()) {
    if (char === "(") open++;
    if (char === ")") open--;
    if (open === 0) return i > 0 && i === [...text].length - 1;
  }
  return false;
}
