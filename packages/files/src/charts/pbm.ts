/** Portable bitmaps, plain (P1) and packed (P4): 1 is black and stands for a raised end or a drawn unit. */

import { type BitGrid, needGrid } from "@drawcord/grid";
import { FileError } from "../error.js";
import { needBytes } from "../need.js";
import { lineStarts, stretchIn, type TextStretch } from "../place.js";
import { codeName } from "../printable.js";
import { checkFileSize } from "../text.js";
import { packedLength, packRow, unpackRows } from "./pack.js";

/** How a bitmap is written. */
export interface PbmOptions {
  /** Default: the packed kind, `P4`. */
  readonly kind?: "P1" | "P4";
}

/**
 * A portable bitmap of a grid, its last row on top.
 * @param grid rows are picks, row 0 woven first
 * @param options `P4`, packed, or `P1`, in letters; `P4` by default
 * @example writePbm(fromText("#."), { kind: "P1" }).length // 10
 */
export function writePbm(grid: BitGrid, options: PbmOptions = {}): Uint8Array {
  needGrid(grid);
  const { kind = "P4" } = options;
  const header = new TextEncoder().encode(`${kind}\n${grid.columns} ${grid.rows}\n`);
  const line = kind === "P4" ? packedLength(grid.columns) : grid.columns + 1;
  const bytes = new Uint8Array(header.length + grid.rows * line);
  bytes.set(header);
  for (let row = 0; row < grid.rows; row++) {
    const offset = header.length + (grid.rows - 1 - row) * line;
    if (kind === "P4") packRow(grid, row, bytes, offset);
    else {
      for (let column = 0; column < grid.columns; column++) {
        bytes[offset + column] = grid.get(row, column) ? ONE : ZERO;
      }
      bytes[offset + grid.columns] = NEWLINE;
    }
  }
  return bytes;
}

const ZERO = 48;
const ONE = 49;
const NEWLINE = 10;
const HASH = 35;

/**
 * The grid of a portable bitmap (P1 or P4), its top row woven last. The size is compared with the data before any memory
 * is taken.
 * @param bytes the whole file
 * @param file the name that errors bear
 * @throws {FileError} `too-large` over 16 MiB; `bad-chart` for anything but one whole bitmap, with the line and column
 * (of the byte, counted as a character)
 * @example toText(readPbm(new TextEncoder().encode("P1 2 1 1 0"), "moth.pbm")) // "#."
 */
export function readPbm(bytes: Uint8Array, file: string): BitGrid {
  needBytes(bytes);
  checkFileSize(bytes.length, file);
  const refuse = (sentence: string, offset: number) =>
    new FileError("bad-chart", sentence, file, placeOfByte(bytes, offset));
  const packed = bytes[1] === ONE + 3;
  if (bytes[0] !== 80 || !(packed || bytes[1] === ONE)) {
    throw refuse("this is no portable bitmap; it must begin with P1 or P4", 0);
  }
  const width = readNumber(bytes, 2, refuse);
  const height = readNumber(bytes, width.end, refuse);
  const columns = width.value;
  const rows = height.value;
  if (columns === 0 || rows === 0) throw refuse("the bitmap has no squares", 2);

  const length = packedLength(columns);
  const needed = packed ? rows * length : rows * columns;
  const from = packed ? afterHeader(bytes, height.end, refuse) : height.end;
  const there = bytes.length - from;
  if (needed > there) {
    const sentence = `a bitmap of ${columns} by ${rows} squares takes ${needed} bytes; ${Math.max(0, there)} follow`;
    throw refuse(sentence, Math.min(from, bytes.length));
  }
  if (!packed) return unpackRows(packDigits(bytes, from, rows, columns, refuse), rows, columns);
  const rest = bytes.subarray(from + needed);
  const stray = rest.findIndex((byte) => !isBlank(byte));
  if (stray >= 0) throw refuse("something follows the bitmap; a file holds one chart", from + needed + stray);
  return unpackRows(bytes.subarray(from, from + needed), rows, columns);
}

type Refuse = (sentence: string, offset: number) => FileError;

/** The digits of a plain bitmap as packed rows. */
function packDigits(
  bytes: Uint8Array,
  from: number,
  rows: number,
  columns: number,
  refuse: Refuse,
): Uint8Array {
  const length = packedLength(columns);
  const packed = new Uint8Array(rows * length);
  const total = rows * columns;
  let square = 0;
  for (let at = from; at < bytes.length; at++) {
    const byte = bytes[at]!;
    if (isBlank(byte)) continue;
    if (byte === HASH) at = endOfLine(bytes, at);
    else if (byte !== ZERO && byte !== ONE) {
      const found = byte > 32 && byte < 127 ? `"${String.fromCharCode(byte)}"` : codeName(byte);
      throw refuse(`${found} was found; a plain bitmap is made of 0 and 1`, at);
    } else {
      if (square === total) throw refuse("something follows the bitmap; a file holds one chart", at);
      const column = square % columns;
      if (byte === ONE)
        packed[((square - column) / columns) * length + (column >>> 3)]! |= 0x80 >>> (column & 7);
      square++;
    }
  }
  if (square === total) return packed;
  throw refuse(`the bitmap ends after ${square} of its ${total} squares`, bytes.length);
}

/** A whole number of the header, after blanks and comments. */
function readNumber(
  bytes: Uint8Array,
  from: number,
  refuse: Refuse,
): { readonly value: number; readonly end: number } {
  let at = from;
  while (at < bytes.length && (isBlank(bytes[at]) || bytes[at] === HASH)) {
    at = bytes[at] === HASH ? endOfLine(bytes, at) : at + 1;
  }
  let value = 0;
  const start = at;
  for (; at < bytes.length && bytes[at]! >= ZERO && bytes[at]! <= ZERO + 9; at++) {
    value = value * 10 + bytes[at]! - ZERO;
    if (at - start >= 9)
      throw refuse("the bitmap has sides beyond measure; up to nine digits are read", start);
  }
  if (at === start) throw refuse("the width and the height of the bitmap were expected here", start);
  return { value, end: at };
}

/** Where the squares of a packed bitmap begin: after one blank, or after the line end of a comment that stands in its place. */
function afterHeader(bytes: Uint8Array, end: number, refuse: Refuse): number {
  const at = bytes[end] === HASH ? endOfLine(bytes, end) : end;
  if (at < bytes.length && !isBlank(bytes[at])) throw refuse("a blank was expected before the squares", at);
  return at + 1;
}

function endOfLine(bytes: Uint8Array, from: number): number {
  const end = bytes.subarray(from).findIndex((byte) => byte === NEWLINE || byte === 13);
  return end < 0 ? bytes.length : from + end;
}

function isBlank(byte: number | undefined): boolean {
  return byte === 32 || (byte !== undefined && byte >= 9 && byte <= 13);
}

function placeOfByte(bytes: Uint8Array, offset: number): TextStretch {
  const before = new TextDecoder("latin1").decode(bytes.subarray(0, offset));
  return stretchIn(lineStarts(before), offset, Math.min(offset + 1, bytes.length));
}
