/**
 * A line of a weaving order: a block and what is done with it, from left to right.
 *
 *     moth *3
 *     moth mirrored on 1-8 upside-down
 *     moth *4 every-other turned on 1-8
 *     moth exchanged on 1-8 framed 2 rows of 1-9 beside 9
 *     moth framed in vine mitred on 1-8 beside 9-10
 *     moth *fill with edge on 13-16
 */
import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import type { LiftChange } from "./lift-change.js";
import { NotationError } from "./notation-error.js";
import { parseShafts, printShafts } from "./row-notation.js";
import { parseThreading } from "./threading-notation.js";

/** A block of rows, and the changes made to it, first to last. */
export interface ChangedBlock {
  /** What the block is called. */
  readonly block: string;
  /** What is done to it, the first first. */
  readonly changes: readonly LiftChange[];
}

/** A line of a weaving order: a block, and any that are drawn in the same rows, each on shafts of its own. */
export interface WovenBlock extends ChangedBlock {
  /** The blocks drawn beside it; the shorter ones are repeated to the length of the longest. */
  readonly beside?: readonly ChangedBlock[];
  /** Whether the last repeat of a shorter one may be cut short; otherwise its repeats must come out even. */
  readonly cutShort?: true;
}

interface Word {
  readonly text: string;
  readonly column: number;
}

/** The words of a line, read from the left. */
interface WordReader {
  readonly peek: () => Word | undefined;
  readonly next: () => Word | undefined;
  /** The column just past the last word. */
  readonly end: number;
}

/** How often `every-other` may stand within another. */
const MOST_NESTED = 8;

const CHANGES =
  "*N, *fill, on, upside-down, mirrored, turned, exchanged, brick, half-drop, framed, framed in, fitted, with";

/**
 * Reads a line of a weaving order: the name of a block, then any of `*3`, `on 9-16` (its shafts 1 to 8 as shafts 9 to
 * 16), `upside-down`, `mirrored`, `turned`, `exchanged` and `brick` (each with `on 1-8`, else on all pattern shafts),
 * `half-drop on 1-4 beside 5-8`, `framed 2 rows of 1-9 beside 9`, `framed in vine mitred on 1-8 beside 9-10` (a border of the
 * block `vine` that turns its corners, `mitred` or `meeting`), `fitted to 60 rows`, and after `*4`: `every-other` with
 * one of these; `*fill` at the end is as often as the piece has room for. `with` and another block, changed in the same
 * way, draws it in the same rows; `cut-short` at the end of the line allows its last repeat to be cut.
 * @param text the line, such as `moth mirrored on 1-8 *3`
 * @throws {UnitsError} with the `column` (from 1): `unknown-word` for a word out of place, and as `parseShafts`
 * @example parseWovenBlock("moth mirrored on 1-8") // { block: "moth", changes: [{ change: "mirrored", on: [1, 2, 3, 4, 5, 6, 7, 8] }] }
 */
export function parseWovenBlock(text: string): WovenBlock {
  const read = readWords(text);
  const first = readBlock(read);
  const beside: ChangedBlock[] = [];
  while (read.peek()?.text === "with") {
    read.next();
    beside.push(readBlock(read));
  }
  if (beside.length === 0) {
    if (read.peek() !== undefined) throw misplaced(read.next(), read, CHANGES);
    return first;
  }
  const last = read.next();
  if (last !== undefined && (last.text !== "cut-short" || read.peek() !== undefined)) {
    throw misplaced(
      last.text === "cut-short" ? read.peek() : last,
      read,
      `"cut-short" or the end of the line`,
    );
  }
  return { ...first, beside, ...(last !== undefined && { cutShort: true }) };
}

/** A block and its changes, up to the word that is none. */
function readBlock(read: WordReader): ChangedBlock {
  const block = readName(read);
  const changes: LiftChange[] = [];
  while (!["with", "cut-short", undefined].includes(read.peek()?.text)) {
    const { column } = read.peek()!;
    if (changes.at(-1)?.change === "filled") {
      throw new NotationError("unknown-word", `"*fill" comes last; expected "with" or the end of the line`, {
        column,
      });
    }
    changes.push(readChange(read));
  }
  return { block, changes };
}

/**
 * Writes a line of a weaving order so that `parseWovenBlock` reads it back.
 * @param woven the block or blocks with what is done to them
 * @example printWovenBlock({ block: "moth", changes: [{ change: "repeated", times: 3 }] }) // "moth *3"
 */
export function printWovenBlock(woven: WovenBlock): string {
  const { beside = [], cutShort } = woven;
  const blocks = [woven, ...beside].map(({ block, changes }) =>
    [block, ...changes.map(printChange)].join(" "),
  );
  return `${blocks.join(" with ")}${cutShort ? " cut-short" : ""}`;
}

/**
 * The blocks that a line of a weaving order names, each once: those that it weaves, and those that borders are built from.
 * @param line a line of a weaving order
 * @example blocksNamed(parseWovenBlock("moth framed in vine mitred beside 9-10")) // ["moth", "vine"]
 */
export function blocksNamed(line: WovenBlock): readonly string[] {
  const parts = [line, ...(line.beside ?? [])];
  return [...new Set(parts.flatMap(({ block, changes }) => [block, ...changes.flatMap(stripsIn)]))];
}

function stripsIn(change: LiftChange): readonly string[] {
  if (change.change === "bordered") return [change.strip];
  const every = change.change === "alternating" || change.change === "filled" ? change.every : undefined;
  return every === undefined ? [] : stripsIn(every);
}

function readWords(text: string): WordReader {
  const words = [...text.matchAll(/\*\s*(?:\d+|fill\b)|\*|[^\s,*]+/g)].map(({ 0: word, index }) => ({
    text: word,
    column: index + 1,
  }));
  let at = 0;
  return { peek: () => words[at], next: () => words[at++], end: text.length + 1 };
}

function misplaced(word: Word | undefined, read: WordReader, expected: string): UnitsError {
  const found = word === undefined ? "the end of the line" : `"${word.text}"`;
  return new NotationError("unknown-word", `${found} was found; expected ${expected}`, {
    column: word?.column ?? read.end,
    found: word?.text ?? "",
  });
}

function readChange(read: WordReader, nested = 0): LiftChange {
  const word = read.next();
  switch (word?.text) {
    case "upside-down":
      return { change: "upside-down" };
    case "on":
      return { change: "placed", on: readShaftsFrom(read) };
    case "mirrored":
    case "turned":
    case "exchanged":
    case "brick":
      return { change: word.text, ...(read.peek()?.text === "on" && { on: readShaftsAfter("on", read) }) };
    case "half-drop":
      return {
        change: "half-drop",
        on: readShaftsAfter("on", read),
        beside: readShaftsAfter("beside", read),
      };
    case "framed": {
      if (read.peek()?.text === "in") return readBorder(read);
      const rows = readRows(read);
      const across = readShaftsAfter("of", read);
      return {
        change: "framed",
        rows,
        across,
        ...(read.peek()?.text === "beside" && { edge: readShaftsAfter("beside", read) }),
      };
    }
    case "fitted":
      expectWord("to", read);
      return { change: "fitted", rows: readRows(read) };
  }
  if (/^\*\s*fill$/.test(word?.text ?? "") && nested === 0) {
    if (read.peek()?.text !== "every-other") return { change: "filled" };
    read.next();
    return { change: "filled", every: readChange(read, 1) };
  }
  const times = Number(/^\*\s*(\d+)$/.exec(word?.text ?? "")?.[1]);
  if (!(times >= 1))
    throw misplaced(word, read, word?.text.startsWith("*") ? "* and how many times" : CHANGES);
  if (read.peek()?.text !== "every-other") return { change: "repeated", times };
  const within = read.next();
  if (nested === MOST_NESTED) throw misplaced(within, read, `a change without another "every-other"`);
  return { change: "alternating", times, every: readChange(read, nested + 1) };
}

/** `in vine mitred on 1-8 beside 9-10`. */
function readBorder(read: WordReader): LiftChange {
  expectWord("in", read);
  const strip = readName(read);
  const word = read.next();
  if (word?.text !== "mitred" && word?.text !== "meeting") {
    throw misplaced(word, read, `"mitred" or "meeting", the turn of the corner`);
  }
  return {
    change: "bordered",
    strip,
    corner: word.text,
    ...(read.peek()?.text === "on" && { on: readShaftsAfter("on", read) }),
    beside: readSides(read),
  };
}

/** The shafts of the sides, in their order from the edge. */
function readSides(read: WordReader): readonly number[] {
  expectWord("beside", read);
  const first = read.peek();
  const words: string[] = [];
  while (/^\d+(-\d+)?$/.test(read.peek()?.text ?? "")) words.push(read.next()!.text);
  if (words.length === 0) throw misplaced(first, read, "the numbers of shafts");
  const sides = parseThreading(words.join(" ")).flat();
  if (new Set(sides).size === sides.length) return sides;
  throw misplaced(first, read, "each shaft once");
}

/** The name of a block. */
function readName(read: WordReader): string {
  const name = read.next();
  if (name !== undefined && /^[a-z_][\w-]*$/i.test(name.text)) return name.text;
  throw misplaced(name, read, "the name of a block, which begins with a letter");
}

function expectWord(text: string, read: WordReader): Word {
  const word = read.next();
  if (word?.text !== text) throw misplaced(word, read, `"${text}"`);
  return word;
}

/** `2 rows`, or `1 row`. */
function readRows(read: WordReader): number {
  const word = read.next();
  if (!/^\d+$/.test(word?.text ?? "")) throw misplaced(word, read, "a number of rows");
  const rows = Number(word?.text);
  const unit = read.next();
  if (unit?.text !== "rows" && unit?.text !== "row") throw misplaced(unit, read, `"rows"`);
  return rows;
}

/** The shafts that follow the word `after`. */
function readShaftsAfter(after: string, read: WordReader): ShaftSet {
  expectWord(after, read);
  return readShaftsFrom(read);
}

function readShaftsFrom(read: WordReader): ShaftSet {
  const first = read.peek();
  const parts: string[] = [];
  let end = first?.column ?? 0;
  for (let word = read.peek(); word !== undefined && /^\d/.test(word.text); word = read.peek()) {
    // Blanks keep the columns of the line for an error in the middle of it.
    parts.push(word.text.padStart(word.column - end + word.text.length));
    end = word.column + word.text.length;
    read.next();
  }
  if (first === undefined || parts.length === 0) throw misplaced(first, read, "the numbers of shafts");
  try {
    return parseShafts(parts.join(""));
  } catch (error) {
    if (!(error instanceof UnitsError)) throw error;
    const { column = 1, ...facts } = error.facts;
    throw new NotationError(error.code, error.reason, {
      ...facts,
      column: Number(column) + first.column - 1,
    });
  }
}

function printChange(change: LiftChange): string {
  switch (change.change) {
    case "repeated":
      return `*${change.times}`;
    case "upside-down":
      return change.change;
    case "placed":
      return `on ${printShafts(change.on)}`;
    case "filled":
      return change.every === undefined ? "*fill" : `*fill every-other ${printChange(change.every)}`;
    case "mirrored":
    case "turned":
    case "exchanged":
    case "brick":
      return change.on === undefined ? change.change : `${change.change} on ${printShafts(change.on)}`;
    case "half-drop":
      return `half-drop on ${printShafts(change.on)} beside ${printShafts(change.beside)}`;
    case "framed": {
      const edge = change.edge === undefined ? "" : ` beside ${printShafts(change.edge)}`;
      return `framed ${change.rows} rows of ${printShafts(change.across)}${edge}`;
    }
    case "bordered": {
      const on = change.on === undefined ? "" : ` on ${printShafts(change.on)}`;
      return `framed in ${change.strip} ${change.corner}${on} beside ${printShafts(change.beside)}`;
    }
    case "fitted":
      return `fitted to ${change.rows} rows`;
    case "alternating":
      return `*${change.times} every-other ${printChange(change.every)}`;
  }
}
