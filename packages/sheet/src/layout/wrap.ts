import { wordsOf } from "../document/text.js";
import type { Text } from "../document/types.js";
import { textWidth } from "../drawing/metrics.js";
import { palette } from "../drawing/palette.js";
import type { Face, TextShape } from "../drawing/shape.js";

/** How a text is set. */
export interface Type {
  /** In mm. */
  readonly size: number;
  /** From baseline to baseline in mm. */
  readonly lead: number;
  readonly face: Face;
  readonly strong: Face;
  readonly fill?: string;
}

/** A stretch of a line in one face. */
interface Piece {
  readonly text: string;
  readonly face: Face;
}

/** A line of text. */
export type Line = readonly Piece[];

/** Fonts other than the printed ones run wider; lines leave them so much room. */
const SLACK = 1.02;

/**
 * Text cut into lines of at most `width` mm, between words where it can be and within a word where it must.
 * @example wrap("moth and lantern", 20, type.body).length // 2
 */
export function wrap(text: Text, width: number, type: Type): Line[] {
  const lines: Piece[][] = [[]];
  let used = 0;
  const put = (piece: Piece, wide: number) => {
    const line = lines.at(-1)!;
    const last = line.at(-1);
    if (last?.face === piece.face) line[line.length - 1] = { ...last, text: last.text + piece.text };
    else line.push(piece);
    used += wide;
  };
  const newLine = () => {
    lines.push([]);
    used = 0;
  };
  for (const words of wordsOf(text)) {
    const face = words.strong ? type.strong : type.face;
    for (const word of words.text.match(/\n|[^\S\n\u00a0]+|[^\s\u00a0]+(?:\u00a0[^\s\u00a0]*)*|\u00a0+/g) ??
      []) {
      if (word === "\n") {
        newLine();
        continue;
      }
      const wide = textWidth(word, type.size, face) * SLACK;
      if (/^\s/.test(word)) {
        if (used > 0 && used + wide <= width)
          put({ text: " ", face }, textWidth(" ", type.size, face) * SLACK);
        continue;
      }
      if (used > 0 && used + wide > width) newLine();
      if (wide <= width) put({ text: word, face }, wide);
      else
        for (const part of cut(word, width, type.size, face)) {
          if (used > 0) newLine();
          put({ text: part, face }, textWidth(part, type.size, face) * SLACK);
        }
    }
  }
  return lines.map(trimmed);
}

function trimmed(line: readonly Piece[]): Line {
  const last = line.at(-1);
  if (last === undefined || !last.text.endsWith(" ")) return line;
  const text = last.text.trimEnd();
  return text === "" ? line.slice(0, -1) : [...line.slice(0, -1), { ...last, text }];
}

/** A word too long for any line, cut into pieces that fit; marks stay with the letter before them. */
function cut(word: string, width: number, size: number, face: Face): string[] {
  const parts: string[] = [];
  let part = "";
  let used = 0;
  for (const char of word.match(/\P{M}(?:\p{M}|\u200d)*/gu) ?? [word]) {
    const wide = textWidth(char, size, face) * SLACK;
    if (used + wide > width && part !== "") {
      parts.push(part);
      part = "";
      used = 0;
    }
    part += char;
    used += wide;
  }
  return [...parts, part];
}

/**
 * Lines of text as shapes, the first baseline below `y`; lines that run from right to left are set against the right edge.
 */
export function setLines(
  lines: readonly Line[],
  x: number,
  y: number,
  width: number,
  type: Type,
  rtl = false,
): TextShape[] {
  return lines.flatMap((line, i) => {
    const baseline = y + type.size * 0.8 + i * type.lead;
    let at = x;
    return line.map(({ text, face }): TextShape => {
      const shape: TextShape = {
        kind: "text",
        x: rtl ? x + width : at,
        y: baseline,
        text,
        size: type.size,
        face,
        fill: type.fill ?? palette.ink,
        rtl,
        ...(rtl ? { anchor: "end" } : {}),
      };
      at += textWidth(text, type.size, face);
      return shape;
    });
  });
}

/** Height of lines of text, from above the first to below the last. */
export function linesHeight(lines: readonly Line[], type: Type): number {
  return lines.length === 0 ? 0 : (lines.length - 1) * type.lead + type.size * 1.1;
}
