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
  /** Whether it is set small and below the line. */
  readonly low: boolean;
}

/** The size of an index beside that of its letter, and how far below the line it stands. */
const INDEX = { size: 0.7, below: 0.18 };

function widthOf({ text, face, low }: Piece, size: number): number {
  return textWidth(text, low ? size * INDEX.size : size, face);
}

/** A line of text. */
export type TextLine = readonly Piece[];

/** Fonts other than the printed ones run wider; lines leave them so much room. */
const SLACK = 1.02;

/**
 * Text cut into lines of at most `width` mm, between words where it can be and within a word where it must.
 * @example wrap("moth and lantern", 20, type.body).length // 2
 */
export function wrap(text: Text, width: number, type: Type): TextLine[] {
  const lines: Piece[][] = [[]];
  let used = 0;
  const put = (piece: Piece) => {
    const line = lines.at(-1)!;
    const last = line.at(-1);
    if (last?.face === piece.face && last.low === piece.low)
      line[line.length - 1] = { ...last, text: last.text + piece.text };
    else line.push(piece);
    used += widthOf(piece, type.size) * SLACK;
  };
  const newLine = () => {
    lines.push([]);
    used = 0;
  };
  for (const words of wordsOf(text)) {
    const face = words.strong ? type.strong : type.face;
    const low = words.low ?? false;
    for (const word of words.text.match(/\n|[^\S\n\u00a0]+|[^\s\u00a0]+(?:\u00a0[^\s\u00a0]*)*|\u00a0+/g) ??
      []) {
      if (word === "\n") {
        newLine();
        continue;
      }
      const wide = widthOf({ text: word, face, low }, type.size) * SLACK;
      if (/^\s/.test(word)) {
        if (used > 0 && used + wide <= width) put({ text: " ", face, low });
        continue;
      }
      if (used > 0 && used + wide > width) newLine();
      if (wide <= width) put({ text: word, face, low });
      else
        for (const part of cut(word, width, type.size, face)) {
          if (used > 0) newLine();
          put({ text: part, face, low });
        }
    }
  }
  return lines.map(trimmed);
}

function trimmed(line: readonly Piece[]): TextLine {
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
  lines: readonly TextLine[],
  x: number,
  y: number,
  width: number,
  type: Type,
  rtl = false,
): TextShape[] {
  return lines.flatMap((line, i) => {
    const baseline = y + type.size * 0.8 + i * type.lead;
    let at = x;
    return line.map((piece): TextShape => {
      const { text, face, low } = piece;
      const shape: TextShape = {
        kind: "text",
        x: rtl ? x + width : at,
        y: baseline + (low ? INDEX.below * type.size : 0),
        text,
        size: low ? INDEX.size * type.size : type.size,
        face,
        fill: type.fill ?? palette.ink,
        rtl,
        ...(rtl ? { anchor: "end" } : {}),
      };
      at += widthOf(piece, type.size);
      return shape;
    });
  });
}

/** Height of lines of text, from above the first to below the last. */
export function linesHeight(lines: readonly TextLine[], type: Type): number {
  return lines.length === 0 ? 0 : (lines.length - 1) * type.lead + type.size * 1.1;
}
