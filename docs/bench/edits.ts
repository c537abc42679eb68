/** A stretch of the text, from 0; the end is the place behind it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** An edit of the text. */
export interface Edit extends Stretch {
  readonly text: string;
}

/**
 * The edits that make one text of another, as short as lines with as many lines allow: each line that differs is cut to
 * what differs in it.
 * @param before the text as it is
 * @param after the text as it is to be
 * @returns in the order of the text, none overlapping another
 */
export function editsBetween(before: string, after: string): readonly Edit[] {
  const was = before.split("\n");
  const is = after.split("\n");
  if (was.length !== is.length) return [editOf(before, after, 0)];
  let at = 0;
  return was.flatMap((line, i) => {
    const from = at;
    at += line.length + 1;
    return line === is[i] ? [] : [editOf(line, is[i]!, from)];
  });
}

/** One edit from the first character that differs to the last. */
function editOf(before: string, after: string, at: number): Edit {
  const most = Math.min(before.length, after.length);
  let first = 0;
  while (first < most && before[first] === after[first]) first++;
  let last = 0;
  while (last < most - first && before.at(-1 - last) === after.at(-1 - last)) last++;
  return { from: at + first, to: at + before.length - last, text: after.slice(first, after.length - last) };
}

/** An edit as it is shown: the line with what is taken out, what is put in, and what stands about them. */
export interface ShownEdit {
  /** The line in which it begins, from 1. */
  readonly line: number;
  readonly before: string;
  readonly out: string;
  readonly put: string;
  readonly after: string;
}

/**
 * Edits within their lines.
 * @param text the text as it is
 * @param edits of it
 */
export function shownEdits(text: string, edits: readonly Edit[]): readonly ShownEdit[] {
  return edits.map(({ from, text: put, to }) => {
    const start = text.lastIndexOf("\n", from - 1) + 1;
    const end = text.indexOf("\n", to);
    return {
      line: text.slice(0, from).split("\n").length,
      before: text.slice(start, from).trimStart(),
      out: text.slice(from, to),
      put,
      after: text.slice(to, end < 0 ? text.length : end),
    };
  });
}

/**
 * A text with edits made.
 * @param text the text as it is
 * @param edits as `editsBetween` gives them
 */
export function edited(text: string, edits: readonly Edit[]): string {
  return edits
    .toReversed()
    .reduce((so, { from, to, text: by }) => so.slice(0, from) + by + so.slice(to), text);
}
