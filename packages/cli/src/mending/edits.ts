/** A stretch of a text to be taken out, and what stands in its place; lines and columns from 1. */
export interface Edit {
  readonly from: { readonly line: number; readonly column: number };
  /** The place behind the last character taken out; `from` where nothing is. */
  readonly to: { readonly line: number; readonly column: number };
  readonly text: string;
}

/**
 * The edits that make one text of another: line by line where it has as many, else all between the first line that differs
 * and the last.
 * @example editsBetween("a\nb\nc\n", "a\nB\nc\n") // [{ from: { line: 2, column: 1 }, to: { line: 3, column: 1 }, text: "B\n" }]
 */
export function editsBetween(before: string, after: string): Edit[] {
  const was = before.split("\n");
  const is = after.split("\n");
  if (was.length === is.length) {
    return was.flatMap((line, i) => (line === is[i] ? [] : [editOf(was, i, i + 1, [is[i]!])]));
  }
  let first = 0;
  while (was[first] === is[first]) first++;
  let same = 0;
  const most = Math.min(was.length, is.length) - first;
  while (same < most && was.at(-1 - same) === is.at(-1 - same)) same++;
  return [editOf(was, first, was.length - same, is.slice(first, is.length - same))];
}

/**
 * Lines in place of those from `first` on, as far as `end` (from 0, without it). A line goes with its end, and at the end of
 * the text with that of the line before.
 */
function editOf(was: readonly string[], first: number, end: number, lines: readonly string[]): Edit {
  const from = { line: first + 1, column: 1 };
  if (end < was.length) {
    return { from, to: { line: end + 1, column: 1 }, text: lines.map((line) => `${line}\n`).join("") };
  }
  const to = { line: was.length, column: was.at(-1)!.length + 1 };
  if (first === 0) return { from, to, text: lines.join("\n") };
  const before = { line: first, column: was[first - 1]!.length + 1 };
  return { from: before, to, text: lines.map((line) => `\n${line}`).join("") };
}
