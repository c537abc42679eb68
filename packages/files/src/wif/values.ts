/** The values of a WIF file: whole numbers, lists of them, decimals, truths. Numbers may be followed by a comment. */
import { FileError, type FileErrorCode } from "../error.js";
import { printable } from "../printable.js";
import { attempt, tell } from "../tree/problems.js";
import type { Entry, Ini, WifSection } from "./ini.js";

/** The error that says what is wrong with a value, at its place. */
export function badValue(
  ini: Ini,
  entry: Entry,
  sentence: string,
  code: FileErrorCode = "bad-draft",
): FileError {
  return new FileError(code, sentence, ini.file, ini.place(entry.offset, entry.offset + entry.value.length));
}

/** A value without the comment after it. */
export function bare(entry: Entry): string {
  const comment = entry.value.indexOf(";");
  return comment < 0 ? entry.value : entry.value.slice(0, comment).trimEnd();
}

/** A whole number from 0, up to `most`. */
export function wholeNumber(ini: Ini, entry: Entry, most: number): number {
  const text = bare(entry);
  const number = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (number <= most) return number;
  throw badValue(ini, entry, `${entry.key}=${printable(text, 40)}: expected a whole number up to ${most}`);
}

/** Whole numbers between commas, each up to `most`; 0 and an empty value stand for none. Ascending, each once. */
export function numberSet(ini: Ini, entry: Entry, most: number, things: string): readonly number[] {
  const numbers = new Set<number>();
  for (const word of bare(entry).split(",")) {
    const text = word.trim();
    if (text === "") continue;
    const number = /^\d+$/.test(text) ? Number(text) : Number.NaN;
    if (!(number <= most)) {
      const sentence = `${entry.key}=${printable(bare(entry), 40)}: expected ${things} from 1 to ${most}, with commas between`;
      throw badValue(ini, entry, sentence);
    }
    if (number > 0) numbers.add(number);
  }
  return [...numbers].sort((a, b) => a - b);
}

/** A list of whole numbers in their order, such as a colour. */
export function numberList(ini: Ini, entry: Entry): readonly number[] {
  const words = bare(entry).split(",");
  const numbers = words.map((word) => (/^-?\d{1,9}$/.test(word.trim()) ? Number(word) : Number.NaN));
  if (!numbers.some(Number.isNaN)) return numbers;
  const sentence = `${entry.key}=${printable(bare(entry), 40)}: expected whole numbers with commas between`;
  throw badValue(ini, entry, sentence);
}

/** A number from 0 with or without decimals. */
export function decimal(ini: Ini, entry: Entry): number {
  const text = bare(entry);
  const number = /^(\d+(\.\d*)?|\.\d+)(e[-+]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(number)) return number;
  throw badValue(ini, entry, `${entry.key}=${printable(text, 40)}: expected a number from 0`);
}

/** `true`, `yes`, `on` and `1`, or their opposites, in any letter case. */
export function truth(ini: Ini, entry: Entry): boolean {
  if (["true", "yes", "on", "1"].includes(bare(entry).toLowerCase())) return true;
  if (isFalse(entry)) return false;
  throw badValue(ini, entry, `${entry.key}=${printable(bare(entry), 40)}: expected true or false`);
}

/** Whether a value says no. */
export function isFalse(entry: Entry): boolean {
  return ["false", "no", "off", "0"].includes(bare(entry).toLowerCase());
}

/** What `read` gives of an entry; undefined, and the problem told, where it cannot be read. */
export function tried<T>(
  ini: Ini,
  entry: Entry | undefined,
  read: (ini: Ini, entry: Entry) => T,
): T | undefined {
  return entry && attempt(ini.problems, () => read(ini, entry));
}

/** The entries of a section whose keys number threads, treadles or colours; other keys are problems. */
export function numbered(
  ini: Ini,
  section: WifSection,
  most: number,
  things: string,
): readonly (readonly [number, Entry])[] {
  return [...section.entries.values()].flatMap((entry) => {
    const number = /^\d+$/.test(entry.key) ? Number(entry.key) : Number.NaN;
    if (number >= 1 && number <= most) return [[number, entry] as const];
    const key = Number.isNaN(number) ? `"${printable(entry.key, 40)}"` : entry.key;
    const sentence = `${key} is none of the ${things} 1 to ${most} of [${printable(section.name)}]`;
    tell(ini.problems, badValue(ini, entry, sentence));
    return [];
  });
}
