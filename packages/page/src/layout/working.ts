import type { Text, WorkingBlock } from "../document/types.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Shape } from "../drawing/shape.js";
import { formulaBox } from "../formula/boxes.js";
import { formulaText } from "../formula/text.js";
import type { TypesetFormula } from "../formula/types.js";
import type { Flow } from "./flow.js";
import { tagged } from "./tagged.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, type Type, wrap } from "./wrap.js";

const SIZE = type.body.size * 1.05;
const INDENT = 5;
/** What the letters stand for is set beside the formulas, from here on; a formula longer than that has its own line. */
const BESIDE = 84;

/**
 * Sets a working: what is worked out; the formula, the formula with its numbers and the result; beside them what the
 * letters stand for, and the source.
 */
export function layWorking(working: WorkingBlock, flow: Flow): void {
  const { symbols, source } = working;
  const top = 3;
  const title = wrap(working.title, flow.width, type.item);
  const under = top + linesHeight(title, type.item) + 1.6;
  const long = isLong(working);
  const left = stackOf(INDENT, under, (long ? flow.width : BESIDE - 5) - INDENT);
  for (const one of [working.formula, working.substitution]) left.formula(one);
  left.text([{ text: working.result, strong: true }], type.body);
  const right = long
    ? stackOf(INDENT, left.y(), flow.width - INDENT)
    : stackOf(BESIDE, under, flow.width - BESIDE);
  for (const symbol of symbols) right.text(symbol, type.note);
  right.text(`Source: ${source}`, type.note);
  flow.space(3);
  flow.put({
    height: Math.max(left.y(), right.y()) + 1,
    shapes: [
      { kind: "path", d: `M0 0h${round(flow.width)}`, stroke: palette.hair, width: 0.12 },
      tagged({ role: "H3" }, setLines(title, 0, top, flow.width, type.item)),
      ...left.shapes,
      ...right.shapes,
    ],
  });
}

/** Whether the formulas of a working leave no room beside them. */
export function isLong({ formula, substitution }: WorkingBlock): boolean {
  return (
    Math.max(...[formula, substitution].map((one) => formulaBox(one, SIZE).width)) * 0.8 > BESIDE - INDENT - 5
  );
}

/** Lines and formulas one below the other. */
interface Stack {
  readonly shapes: readonly Shape[];
  /** Where the next one comes. */
  y(): number;
  text(line: Text, kind: Type): void;
  formula(formula: TypesetFormula): void;
}

function stackOf(x: number, top: number, width: number): Stack {
  const shapes: Shape[] = [];
  let y = top;
  const text = (line: Text, kind: Type) => {
    const lines = wrap(line, width, kind);
    shapes.push(tagged({ role: "P" }, setLines(lines, x, y, width, kind)));
    y += linesHeight(lines, kind) + 1.2;
  };
  const formula = (one: TypesetFormula) => {
    const box = formulaBox(one, SIZE);
    if (box.width * 0.6 > width) return text(formulaText(one), type.body);
    const scale = Math.min(1, width / box.width);
    const tag = { role: "Formula", alt: formulaText(one) } as const;
    shapes.push({ kind: "group", x, y: y + 0.6 + box.above * scale, scale, tag, shapes: box.shapes });
    y += (box.above + box.below) * scale + 2.2;
  };
  return { shapes, y: () => y, text, formula };
}
