import { boxesOf, plainText, wordsOf } from "../document/text.js";
import type { Column, Table, Text } from "../document/types.js";
import { textWidth } from "../drawing/metrics.js";
import type { Face } from "../drawing/shape.js";
import { type } from "./types-of-text.js";
import type { Type } from "./wrap.js";

const GAP = 4;
const NARROW_GAP = 2.6;

/** Width of a patch of colour. */
export const SWATCH = 8;

/** Boxes to tick: how far they are apart, and how many stand in a line. */
export const BOX_PITCH = 3;
export const BOXES_A_LINE = 6;

/** No column is narrower than this because of its neighbours, if it asks for so much. */
const LEAST = 9;

/** Boxes around words: the room that one takes beside its word, and between it and the next. */
const AROUND = 2;
export const BETWEEN_BOXES = 1;

/** Where a column stands, in mm. */
export interface ColumnPlace {
  readonly x: number;
  readonly width: number;
}

/** The kind of text of a table's cells. */
export function cellType({ large }: Table): Type {
  return large ? type.largeCell : type.cell;
}

/** Where the columns of a table stand in a room: each as wide as its text asks; where that is too much, the widest give way. */
export function columnPlaces(table: Table, room: number): ColumnPlace[] {
  const gap = table.narrow ? NARROW_GAP : GAP;
  let x = 0;
  return columnWidths(table, room, gap).map((width) => {
    const place = { x, width };
    x += width + gap;
    return place;
  });
}

export function widthOf(places: readonly ColumnPlace[]): number {
  const last = places.at(-1)!;
  return last.x + last.width;
}

/** The words of a cell that a box to tick stands around; `·` holds a place without one. */
export function boxedWords(text: Text): string[] {
  return plainText(text)
    .split(/\s+/)
    .filter((word) => word !== "");
}

/** What holds the place of a box in a line of boxes. */
export const NO_BOX = "·";

/** All boxes of a column are as wide as its widest word asks. */
export function boxWidth({ rows }: Table, column: number, kind: Type): number {
  const words = rows.flatMap((row) => boxedWords(row[column]!));
  return words.reduce((most, word) => Math.max(most, textWidth(word, kind.size, kind.face)), 0) + AROUND;
}

function columnWidths(table: Table, room: number, gap: number): number[] {
  const columns = table.columns.map((_, i) => askedBy(table, i));
  return shared(columns, room - gap * (columns.length - 1));
}

/**
 * How much room a column asks for: what holds its longest text; its mean, in which long texts weigh more (the root of the
 * mean square); and less than what it cannot.
 */
interface Asked {
  readonly most: number;
  readonly mean: number;
  readonly least: number;
}

function askedBy(table: Table, column: number): Asked {
  const { title, kind } = table.columns[column]!;
  const head = textWidth(title, type.head.size, type.head.face);
  const cells = table.rows.map((row) => cellWidth(table, row[column]!, kind, column));
  const squares = cells.reduce((total, one) => total + one * one, 0);
  const least = table.rows.reduce((most, row) => Math.max(most, leastWidth(table, row[column]!, column)), 0);
  const most = cells.reduce((longest, one) => Math.max(longest, one), head) * 1.04 + 0.4;
  return {
    most,
    mean: Math.max(head, Math.sqrt(squares / Math.max(1, cells.length))),
    least: Math.min(most, Math.max(LEAST, least * 1.04 + 0.4)),
  };
}

/** Room shared out: what all ask for where there is enough, else by what each takes on the whole, but no less than it must. */
function shared(asked: readonly Asked[], room: number): number[] {
  const widths = asked.map(({ most }) => most);
  if (widths.reduce((sum, one) => sum + one, 0) <= room) return widths;
  const open = new Set(asked.keys());
  let left = room;
  for (;;) {
    const means = [...open].reduce((sum, i) => sum + asked[i]!.mean, 0);
    const share = (i: number) => (left * asked[i]!.mean) / means;
    // Columns that need more than their share are settled first, then those that need less.
    const short = [...open].filter((i) => share(i) < asked[i]!.least);
    const over = short.length > 0 ? [] : [...open].filter((i) => share(i) > asked[i]!.most);
    for (const i of short) widths[i] = asked[i]!.least;
    for (const i of over) widths[i] = asked[i]!.most;
    for (const i of [...short, ...over]) {
      left -= widths[i]!;
      open.delete(i);
    }
    if (open.size === 0) break;
    if (short.length + over.length === 0) {
      for (const i of open) widths[i] = share(i);
      break;
    }
  }
  // Words that cannot all stand beside one another are torn.
  const sum = widths.reduce((total, one) => total + one, 0);
  return sum > room + 0.01 ? widths.map((one) => (one * room) / sum) : widths;
}

function cellWidth(table: Table, text: Text, kind: Column["kind"], column: number): number {
  const cell = cellType(table);
  if (kind === "swatch") return SWATCH;
  if (kind === "tick") return Math.min(boxesOf(text), BOXES_A_LINE) * BOX_PITCH + 0.6;
  if (kind === "boxes") {
    const words = Math.min(boxedWords(text).length, BOXES_A_LINE);
    return words * (boxWidth(table, column, cell) + BETWEEN_BOXES) + 0.4;
  }
  return textWidth(plainText(text), cell.size, faceOf(table, column, text));
}

/** The width of what stands in one line whatever happens: a word, a box. */
function leastWidth(table: Table, text: Text, column: number): number {
  const { kind } = table.columns[column]!;
  const cell = cellType(table);
  if (kind === "swatch" || kind === "tick") return cellWidth(table, text, kind, column);
  if (kind === "boxes") return boxWidth(table, column, cell) + 0.4;
  const face = faceOf(table, column, text);
  const words = plainText(text).split(/[^\S\u00a0]+/);
  return words.reduce((most, word) => Math.max(most, textWidth(word, cell.size, face)), 0);
}

function faceOf(table: Table, column: number, text: Text): Face {
  const cell = cellType(table);
  const strong = table.columns[column]!.kind === "head" || wordsOf(text).some((words) => words.strong);
  return strong ? cell.strong : cell.face;
}
