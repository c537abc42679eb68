import type { Range, TextPoint } from "@drawcord/base";

/** Where something stands in a text: line and column, both from 1. */
export interface Place {
  /** Line, from 1. */
  readonly line: number;
  /** Column, from 1. */
  readonly column: number;
}

/** A piece of a text: where it begins, and where what follows it begins. */
export type TextStretch = Omit<Range, "file">;

/** The top of a file, for what is wrong with the whole of it. */
export const top: TextStretch = { line: 1, column: 1, offset: 0, end: { line: 1, column: 1, offset: 0 } };

/** Where each line of a text begins, from 0; lines end in LF, CR or CR LF. */
export function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (const end of text.matchAll(/\r\n|\r|\n/g)) starts.push(end.index + end[0].length);
  return starts;
}

/** The place of the character at `offset` (from 0), in a text whose lines begin at `starts`. */
function placeIn(starts: readonly number[], offset: number): TextPoint {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - starts[low]! + 1, offset };
}

/**
 * The piece from one offset up to another, in a text whose lines begin at `starts`.
 * @example stretchIn(lineStarts("ab\ncd"), 1, 4).end // { line: 2, column: 2, offset: 4 }
 */
export function stretchIn(starts: readonly number[], from: number, to: number): TextStretch {
  return { ...placeIn(starts, from), end: placeIn(starts, Math.max(from, to)) };
}
