import { textWidth } from "../drawing/metrics.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Face, Shape } from "../drawing/shape.js";
import type { TypesetFormula } from "./types.js";

/** A formula set in type: its size around a baseline at y = 0, and its shapes. */
export interface FormulaBox {
  readonly width: number;
  readonly above: number;
  readonly below: number;
  readonly shapes: readonly Shape[];
}

/**
 * A formula set in type of a size in mm.
 * @example formulaBox({ kind: "word", text: "8", slant: false }, 4).width // 2.116
 */
export function formulaBox(formula: TypesetFormula, size: number): FormulaBox {
  switch (formula.kind) {
    case "word":
      return wordBox(formula.text, size, formula.slant ? "serif-italic" : "serif");
    case "operator":
      return operatorBox(formula.text, size);
    case "row":
      return rowBox(formula.items, size);
    case "fraction":
      return fractionBox(formulaBox(formula.over, size * 0.92), formulaBox(formula.under, size * 0.92), size);
    case "root":
      return rootBox(formulaBox(formula.of, size), size);
    case "script":
      return scriptBox(formula, size);
  }
}

function wordBox(text: string, size: number, face: Face): FormulaBox {
  if (text.trim() === "") return { width: size * 0.17, above: 0, below: 0, shapes: [] };
  const shape: Shape = { kind: "text", x: 0, y: 0, text, size, face, fill: palette.ink };
  return { width: textWidth(text, size, face), above: size * 0.74, below: size * 0.22, shapes: [shape] };
}

function operatorBox(text: string, size: number): FormulaBox {
  const box = wordBox(text, size, "serif");
  if (text === "/") return box;
  const space = size * 0.22;
  if (text === ",") return { ...box, width: box.width + space };
  return { ...box, width: box.width + 2 * space, shapes: moved(box.shapes, space, 0) };
}

/** Items side by side; brackets are as tall as the tallest of what stands with them. */
function rowBox(items: readonly TypesetFormula[], size: number): FormulaBox {
  const boxes = items.map((item) => (isBracket(item) ? undefined : formulaBox(item, size)));
  const above = Math.max(size * 0.74, ...boxes.map((box) => box?.above ?? 0));
  const below = Math.max(size * 0.22, ...boxes.map((box) => box?.below ?? 0));
  let width = 0;
  const shapes: Shape[] = [];
  for (const [i, item] of items.entries()) {
    const before = items[i - 1];
    const first = before === undefined || opens(before);
    const box =
      boxes[i] === undefined
        ? bracketBox((item as { readonly text: string }).text, above, below, size)
        : item.kind === "operator" && first
          ? wordBox(item.text, size, "serif")
          : boxes[i];
    if (before !== undefined && (isSolid(before) || closes(before)) && isSolid(item)) width += size * 0.12;
    shapes.push(...moved(box.shapes, width, 0));
    width += box.width;
  }
  return { width, above, below, shapes };
}

/** Neighbours of this kind, which are multiplied, stand a little apart; a blank between them is room enough. */
function isSolid(item: TypesetFormula): boolean {
  return item.kind !== "operator" && !(item.kind === "word" && item.text.trim() === "");
}

function isBracket(item: TypesetFormula): boolean {
  return opens(item) || closes(item);
}

function opens(item: TypesetFormula): boolean {
  return item.kind === "operator" && /^[(⌈⌊]$/.test(item.text);
}

function closes(item: TypesetFormula): boolean {
  return item.kind === "operator" && /^[)⌉⌋]$/.test(item.text);
}

/** A bracket drawn as a line, since no type has it in every height. */
function bracketBox(text: string, above: number, below: number, size: number): FormulaBox {
  const width = size * 0.34;
  const [near, far] = /[(⌈⌊]/.test(text) ? [width * 0.3, width * 0.8] : [width * 0.7, width * 0.2];
  const [top, foot] = [-above, below];
  const corner = round(far - near);
  const d = /[()]/.test(text)
    ? `M${round(far)} ${round(top)}C${round(near)} ${round(top + (foot - top) * 0.25)} ${round(near)} ${round(foot - (foot - top) * 0.25)} ${round(far)} ${round(foot)}`
    : /[⌈⌉]/.test(text)
      ? `M${round(near)} ${round(foot)}L${round(near)} ${round(top)}h${corner}`
      : `M${round(near)} ${round(top)}L${round(near)} ${round(foot)}h${corner}`;
  return { width, above, below, shapes: [line(d)] };
}

function fractionBox(over: FormulaBox, under: FormulaBox, size: number): FormulaBox {
  const width = Math.max(over.width, under.width) + size * 0.3;
  const axis = -size * 0.27;
  const gap = size * 0.16;
  const up = axis - gap - over.below;
  const down = axis + gap + under.above;
  return {
    width: width + size * 0.2,
    above: over.above - up,
    below: down + under.below,
    shapes: [
      ...moved(over.shapes, size * 0.1 + (width - over.width) / 2, up),
      ...moved(under.shapes, size * 0.1 + (width - under.width) / 2, down),
      line(`M${round(size * 0.1)} ${round(axis)}h${round(width)}`),
    ],
  };
}

function rootBox(inner: FormulaBox, size: number): FormulaBox {
  const lead = size * 0.62;
  const top = -(inner.above + size * 0.12);
  const foot = inner.below;
  const width = lead + inner.width + size * 0.1;
  const d = `M0 ${round(-size * 0.25)}l${round(size * 0.14)} ${round(-size * 0.08)}L${round(size * 0.34)} ${round(foot)}L${round(size * 0.56)} ${round(top)}L${round(width)} ${round(top)}`;
  return {
    width: width + size * 0.05,
    above: -top + size * 0.05,
    below: foot,
    shapes: [line(d), ...moved(inner.shapes, lead, 0)],
  };
}

function scriptBox(formula: Extract<TypesetFormula, { kind: "script" }>, size: number): FormulaBox {
  const base = formulaBox(formula.base, size);
  const small = size * 0.68;
  const above = formula.above === undefined ? undefined : formulaBox(formula.above, small);
  const below = formula.below === undefined ? undefined : formulaBox(formula.below, small);
  return {
    width: base.width + Math.max(above?.width ?? 0, below?.width ?? 0) + size * 0.06,
    above: Math.max(base.above, above === undefined ? 0 : above.above + size * 0.38),
    below: Math.max(base.below, below === undefined ? 0 : below.below + size * 0.18),
    shapes: [
      ...base.shapes,
      ...(above === undefined ? [] : moved(above.shapes, base.width + size * 0.03, -size * 0.38)),
      ...(below === undefined ? [] : moved(below.shapes, base.width + size * 0.03, size * 0.18)),
    ],
  };
}

function line(d: string): Shape {
  return { kind: "path", d, stroke: palette.ink, width: 0.18 };
}

function moved(shapes: readonly Shape[], x: number, y: number): Shape[] {
  return x === 0 && y === 0 ? [...shapes] : [{ kind: "group", x, y, shapes }];
}
