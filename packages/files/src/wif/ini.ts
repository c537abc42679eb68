/** The lines of a WIF file: sections in square brackets, keys with values, comments after semicolons. */
import { FileError } from "../error.js";
import { lineStarts, stretchIn, type TextStretch, top } from "../place.js";
import { noProblems, type Problems, tell } from "../tree/problems.js";

/** The most lines that are read. */
const mostLines = 2_000_000;

/** A value and where it stands in the text. */
export interface Entry {
  readonly key: string;
  readonly value: string;
  /** Where the value begins in the text, from 0. */
  readonly offset: number;
}

/** One section, its keys in lower case; of a key given twice the last counts. */
export interface WifSection {
  /** As it is written. */
  readonly name: string;
  readonly entries: ReadonlyMap<string, Entry>;
  readonly offset: number;
}

/** A WIF file taken apart. */
export interface Ini {
  readonly file: string;
  /** By name in lower case. */
  readonly sections: ReadonlyMap<string, WifSection>;
  /** The piece of the text from one offset up to another. */
  readonly place: (from: number, to: number) => TextStretch;
  /** What is wrong with the text, as far as it was read. */
  readonly problems: Problems;
}

/**
 * Takes a text apart. Lines that begin with a semicolon are comments; a section given twice goes on where it stopped.
 * @param known the sections whose lines are read, in lower case; those of others may hold anything
 * A line that is neither section, key, comment nor empty is a problem (`bad-draft`), and what follows is read.
 * @throws {FileError} `too-many-parts`, `too-many-problems`
 */
export function readIni(text: string, file: string, known: readonly string[]): Ini {
  const starts = lineStarts(text);
  const place = (from: number, to: number) => stretchIn(starts, from, to);
  if (starts.length > mostLines) {
    throw new FileError(
      "too-many-parts",
      `the draft has ${starts.length} lines; up to ${mostLines} are read`,
      file,
      top,
    );
  }
  const problems = noProblems();
  const sections = new Map<string, { name: string; entries: Map<string, Entry>; offset: number }>();
  let entries: Map<string, Entry> | undefined;
  let skipped = false;
  for (const [i, start] of starts.entries()) {
    const line = text.slice(start, starts[i + 1] ?? text.length).trimEnd();
    const from = line.search(/\S/);
    if (from < 0 || line[from] === ";") continue;
    const offset = start + from;
    if (line[from] === "[") {
      const end = line.indexOf("]", from);
      // A name without its bracket is told, and meant all the same.
      const name = line.slice(from + 1, end < 0 ? undefined : end).trim();
      if (end < 0 || name === "") {
        const sentence = "a section's name must stand between [ and ]";
        tell(problems, new FileError("bad-draft", sentence, file, place(offset, start + line.length)));
      }
      const key = name.toLowerCase();
      const section = sections.get(key) ?? { name, entries: new Map<string, Entry>(), offset };
      sections.set(key, section);
      entries = section.entries;
      skipped = !known.includes(key);
      continue;
    }
    if (skipped) continue;
    const equals = line.indexOf("=", from);
    if (equals < 0 || entries === undefined) {
      const expected =
        entries === undefined ? "a section such as [WIF]" : "a key, an equals sign and a value";
      const sentence = `this line is no part of a draft; expected ${expected}`;
      tell(problems, new FileError("bad-draft", sentence, file, place(offset, start + line.length)));
      continue;
    }
    const key = line.slice(from, equals).trim().toLowerCase();
    const value = line.slice(equals + 1).trim();
    entries.set(key, {
      key,
      value,
      offset: start + equals + 1 + Math.max(0, line.slice(equals + 1).search(/\S/)),
    });
  }
  return { file, sections, place, problems };
}
