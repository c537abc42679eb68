/** A plan as a line of entries: units of a threading, rows of a lift plan, picks of the rows, ends of a selvedge. */

/** What the entries of a line are, by their numbers. Numbers are given once to each unlike entry. */
export interface Alphabet {
  /** How many unlike entries there are. */
  readonly size: () => number;
  /** The form of an entry, the same for entries that differ only by how high they lie; 0 where nothing is drawn. */
  readonly form: (entry: number) => number;
  /** How high an entry lies: its lowest shaft. */
  readonly height: (entry: number) => number;
  /** Whether straight runs (each entry one higher, or one lower, than the last) are told as such. */
  readonly runs: boolean;
  /** Whether the line is a whole plan, which may turn in its middle; else it is of parts that were written one after another. */
  readonly whole: boolean;
  /** Bits to tell an entry that was not told before, beside the one before it (-1: none). */
  readonly fresh: (entry: number, before: number) => number;
  /** Bits to tell how a slip made one entry of another. */
  readonly mistaken: (meant: number, written: number) => number;
  /** How many squares of two entries are unlike; 1 where entries are no rows of squares. */
  readonly apart: (one: number, other: number) => number;
  /** How many squares of a row are unlike the one beside them or below or above; 0 where entries are no rows of squares. */
  readonly roughness: (line: EntryLine, at: number) => number;
  /** The entry one higher (or lower); undefined where there is none. */
  readonly next: (entry: number, by: 1 | -1) => number | undefined;
}

/** A line of entries, by their numbers. */
export type EntryLine = readonly number[];

/** One edit of a line. Places count from 0. */
export type LineEdit =
  | { readonly edit: "change"; readonly at: number; readonly to: number }
  | { readonly edit: "insert"; readonly at: number; readonly to: number }
  | { readonly edit: "remove"; readonly at: number }
  | { readonly edit: "swap"; readonly at: number; readonly with: number }
  | {
      readonly edit: "shift";
      readonly from: number;
      readonly to: number;
      readonly entries: readonly number[];
    };

/** The line with an edit made to it. */
export function edited(line: EntryLine, edit: LineEdit): EntryLine {
  switch (edit.edit) {
    case "change":
      return line.with(edit.at, edit.to);
    case "insert":
      return line.toSpliced(edit.at, 0, edit.to);
    case "remove":
      return line.toSpliced(edit.at, 1);
    case "swap":
      return line.with(edit.at, line[edit.with]!).with(edit.with, line[edit.at]!);
    case "shift":
      return line.toSpliced(edit.from, edit.entries.length, ...edit.entries);
  }
}
