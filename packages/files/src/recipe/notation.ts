/** Reads the notations of a recipe, and turns what they throw into problems with their place in the file. */
import { GroundError } from "@drawcord/ground";
import { UnitsError } from "@drawcord/units";
import { type Kind, parseQuantity, type Quantity, YarnError } from "@drawcord/yarn";
import type { FileError, FileErrorCode } from "../error.js";
import { printable } from "../printable.js";
import { attempt, tell, Unread } from "../tree/problems.js";
import { at, type Piece, placeOf, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import type { Placed } from "./types.js";

/**
 * What `read` makes of the text of a value.
 * @throws {FileError} `bad-notation`, or the code given, at the column where the notation goes wrong
 */
export function notation<T>(of: Spot, read: (text: string) => T, code: FileErrorCode = "bad-notation"): T {
  try {
    return read(textOf(of));
  } catch (error) {
    throw notationError(of, error, 0, code) ?? error;
  }
}

/**
 * An error of a notation as an error of the file; its columns count from the character `from` of the value's text.
 * Undefined for an error of another kind.
 */
export function notationError(
  of: Spot,
  error: unknown,
  from = 0,
  code: FileErrorCode = "bad-notation",
): FileError | undefined {
  if (!(error instanceof UnitsError || error instanceof GroundError || error instanceof YarnError))
    return undefined;
  const { column } = error.facts;
  const reason = error instanceof UnitsError ? error.reason : error.message.replace(/^column \d+: /, "");
  const text = textOf(of);
  const piece = typeof column === "number" && text !== "" ? wordAt(text, from + column - 1) : undefined;
  return wrong(of, code, `${wayTo(of.path)}: ${printable(reason, 300)}`, piece);
}

/** The word of a text from a character (from 0) to the blank, comma or bracket after it; that character at least. */
export function wordAt(text: string, from: number): Piece {
  const [word = ""] = /^[^\s,()]*/.exec(text.slice(from)) ?? [];
  return { from, to: from + Math.max(word.length, from < text.length ? 1 : 0) };
}

/** A notation that is read on after a word that has no meaning in it. */
export interface Mendable {
  /** Reads the text, or throws at a column. */
  readonly read: (text: string) => unknown;
  /** What stands for a word that cannot be read, so that what follows keeps its number; no longer than a word. */
  readonly filler: string;
  /** What stands for a text of which no word can be read. */
  readonly nothing: string;
}

/** The most words of one notation that are mended. */
const mostMended = 20;

/**
 * A notation's text that can be read: its own, or with a filler for each word that cannot, which is told.
 * @param text a line of the value's text that begins at its character `from`
 * @throws {FileError} when no filler helps; {Unread} where that is told already
 */
export function readable(of: Spot, text: string, from: number, { filler, nothing, read }: Mendable): string {
  let mended = text;
  for (let pass = 0; ; pass++) {
    try {
      read(mended);
      return mended;
    } catch (error) {
      const problem = notationError(of, error, from);
      const column = (error as UnitsError).facts?.["column"];
      if (problem === undefined) throw error;
      const code = (error as UnitsError).code;
      const hopeless = code === "too-large" || code === "empty-group" || typeof column !== "number";
      if (hopeless || pass === mostMended) throw problem;
      tell(of.tree.problems, problem);
      const next = filled(mended, column - 1, filler);
      if (next === mended) throw new Unread();
      mended = next.trim() === "" ? nothing : next;
    }
  }
}

/** A text with its word at a character (from 0) filled, all columns kept. */
function filled(text: string, at: number, filler: string): string {
  const isBracket = /[()]/.test(text[at] ?? "");
  let from = at;
  while (!isBracket && from > 0 && isOfWord(text[from - 1]!)) from--;
  // A sign before it has lost what it calls for.
  let sign = from;
  while (sign > 0 && /\s/.test(text[sign - 1]!)) sign--;
  const isCalledFor = sign > 0 && /[-+*]/.test(text[sign - 1]!);
  if (isCalledFor) from = sign - 1;
  // A bracket is no part of the word that lacks something before it.
  const to = isBracket && isCalledFor ? sign : wordAt(text, at).to;
  while (isBracket && isCalledFor && from > 0 && isOfWord(text[from - 1]!)) from--;
  const word = text.slice(from, to);
  // A sign without its number, or a bracket, is taken away; anything else is a word.
  const by = /^[-+*()]/.test(word) ? "" : filler;
  return text.slice(0, from) + by.padEnd(word.length) + text.slice(to);
}

function isOfWord(char: string): boolean {
  return /[^\s,()]/.test(char);
}

/** What `read` makes of the text of a value, with the text and its place. */
export function placed<T>(of: Spot, read: (text: string) => T): Placed<T> {
  const { column, line } = placeOf(of);
  return { text: textOf(of), value: notation(of, read), line, column };
}

/** A quantity of one of the kinds, with its unit. */
export function quantityOf(of: Spot, kinds: readonly Kind[]): Quantity {
  return notation(of, (text) => parseQuantity(text, { kind: kinds }));
}

/** A quantity of a section that may leave it out, as a part of an object: `{}` when it is not there, or cannot be read. */
export function quantityAt<Name extends string>(
  of: Spot | undefined,
  key: string,
  name: Name,
  ...kinds: readonly Kind[]
): { readonly [key in Name]?: Quantity } {
  return partAt(of, key, name, (value) => quantityOf(value, kinds));
}

/** What `read` makes of a value that a section may leave out, as a part of an object: `{}` where there is nothing. */
export function partAt<Name extends string, T>(
  of: Spot | undefined,
  key: string,
  name: Name,
  read: (value: Spot) => T,
): { readonly [key in Name]?: T } {
  const value = of === undefined ? undefined : at(of, key);
  const part = value && attempt(value.tree.problems, () => read(value));
  return part === undefined ? {} : ({ [name]: part } as { [key in Name]: T });
}
