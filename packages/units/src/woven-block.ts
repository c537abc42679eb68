/**
 * A line of a weaving order: a block and what is done with it, from left to right.
 *
 *     moth *3
 *     moth mirrored on 1-8 upside-down
 *     moth *4 every-other turned on 1-8
 *     moth exchanged on 1-8 framed 2 rows of 1-9 beside 9
 */
import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import type { LiftChange } from "./lift-change.js";
import { parseShafts, printShafts } from "./row-notation.js";

/** A block of rows, and the changes made to it, first to last. */
export interface WovenBlock {
  readonly block: string;
  readonly changes: readonly LiftChange[];
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

const CHANGES = "*N, upside-down, mirrored, turned, exchanged, brick, half-drop, framed, fitted";

/**
 * Reads a line of a weaving order: the name of a block, then any of `*3`, `upside-down`, `mirrored`, `turned`,
 * `exchanged` and `brick` (each with `on 1-8`, else on all pattern shafts), `half-drop on 1-4 beside 5-8`,
 * `framed 2 rows of 1-9 beside 9`, `fitted to 60 rows`, and after `*4`: `every-other` with one of these.
 * @throws {UnitsError} with the `column` (from 1): `unknown-word` for a word out of place, and as `parseShafts`
 * @example parseWovenBlock("moth mirrored on 1-8") // { block: "moth", changes: [{ change: "mirrored", on: [1, 2, 3, 4, 5, 6, 7, 8] }] }
 */
export function parseWovenBlock(text: string): WovenBlock {
  const read = readWords(text);
  const name = read.next();
  if (name === undefined || !/^[a-z_][\w-]*$/i.test(name.text)) {
    throw misplaced(name, read, "the name of a block, which begins with a letter");
  }
  const changes: LiftChange[] = [];
  while (read.peek() !== undefined) changes.push(readChange(read));
  return { block: name.text, changes };
}

/**
 * Writes a line of a weaving order so that `parseWovenBlock` reads it back.
 * @example printWovenBlock({ block: "moth", changes: [{ change: "repeated", times: 3 }] }) // "moth *3"
 */
export function printWovenBlock(woven: WovenBlock): string {
  return [woven.block, ...woven.changes.map(printChange)].join(" ");
}

function readWords(text: string): WordReader {
  const words = [...text.matchAll(/\*\s*\d*|[^\s,*]+/g)].map(({ 0: word, index }) => ({
    text: word,
    column: index + 1,
  }));
  let at = 0;
  return { peek: () => words[at], next: () => words[at++], end: text.length + 1 };
}

function misplaced(word: Word | undefined, read: WordReader, expected: string): UnitsError {
  const found = word === undefined ? "the end of the line" : `"${word.text}"`;
  return new UnitsError("unknown-word", `${found} was found; expected ${expected}`, {
    column: word?.column ?? read.end,
    found: word?.text ?? "",
  });
}

function readChange(read: WordReader, nested = 0): LiftChange {
  const word = read.next();
  switch (word?.text) {
    case "upside-down":
      return { change: "upside-down" };
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
  const times = Number(/^\*\s*(\d+)$/.exec(word?.text ?? "")?.[1]);
  if (!(times >= 1))
    throw misplaced(word, read, word?.text.startsWith("*") ? "* and how many times" : CHANGES);
  if (read.peek()?.text !== "every-other") return { change: "repeated", times };
  const within = read.next();
  if (nested === MOST_NESTED) throw misplaced(within, read, `a change without another "every-other"`);
  return { change: "alternating", times, every: readChange(read, nested + 1) };
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
    throw new UnitsError(error.code, error.reason, { ...facts, column: Number(column) + first.column - 1 });
  }
}

function printChange(change: LiftChange): string {
  switch (change.change) {
    case "repeated":
      return `*${change.times}`;
    case "upside-down":
      return change.change;
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
    case "fitted":
      return `fitted to ${change.rows} rows`;
    case "alternating":
      return `*${change.times} every-other ${printChange(change.every)}`;
  }
}
