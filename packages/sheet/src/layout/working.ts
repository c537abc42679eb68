import { BLANK } from "../document/text.js";
import type { Text, Working } from "../document/types.js";
import { palette } from "../drawing/palette.js";
import { round } from "../drawing/round.js";
import type { Shape } from "../drawing/shape.js";
import { formulaBox } from "../formula/boxes.js";
import { formulaText } from "../formula/text.js";
import type { Formula } from "../formula/types.js";
import type { Flow } from "./flow.js";
import { type } from "./types-of-text.js";
import { linesHeight, setLines, type Type, wrap } from "./wrap.js";

const SIZE = type.body.size * 1.05;
const INDENT = 5;

/** Sets a working: what is worked out, the formula, the formula with its numbers, the result, and the source. */
export function layWorking(working: Working, flow: Flow): void {
  const shapes: Shape[] = [
    { kind: "path", d: `M0 0h${round(flow.width)}`, stroke: palette.hair, width: 0.12 },
  ];
  let y = 3;
  const text = (line: Text, kind: Type, x = 0) => {
    const lines = wrap(line, flow.width - x, kind);
    shapes.push(...setLines(lines, x, y, flow.width - x, kind));
    y += linesHeight(lines, kind) + 1.2;
  };
  const formula = (one: Formula) => {
    const box = formulaBox(one, SIZE);
    const room = flow.width - INDENT;
    if (box.width * 0.6 > room) return text(formulaText(one), type.body, INDENT);
    const scale = Math.min(1, room / box.width);
    shapes.push({ kind: "group", x: INDENT, y: y + 0.6 + box.above * scale, scale, shapes: box.shapes });
    y += (box.above + box.below) * scale + 2.2;
  };
  text(working.title, type.item);
  formula(working.formula);
  if (working.blank) text(`${BLANK}${BLANK}  =  ${BLANK}`, type.body, INDENT);
  else {
    formula(working.substitution);
    text([{ text: working.result, strong: true }], type.body, INDENT);
  }
  for (const symbol of working.symbols) text(symbol, type.note, INDENT);
  text(`Source: ${working.source}`, type.note, INDENT);
  flow.space(4);
  flow.put({ height: y + 1, shapes });
}
