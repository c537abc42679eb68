/** What was told before in a line: stretches that come again as they are, backwards, or at another height. */
import { fellowsOf } from "./alike.js";
import type { Borders } from "./borders.js";
import type { Alphabet, EntryLine } from "./line.js";

/**
 * For each place the longest stretch from there on that was told before, in one way: [0] one that begins and ends anywhere,
 * [1] ends at a border, [2] begins at a border, [3] both; the borders are those of what was told.
 */
export type Longest = readonly [Int32Array, Int32Array, Int32Array, Int32Array];

/** The longest stretches told before as they are, backwards, and at another height. */
export function longestTold(
  line: EntryLine,
  alphabet: Alphabet,
  borders: Borders,
): readonly [again: Longest, back: Longest, moved: Longest] {
  return [...toldAlike(line, borders), toldHigher(line, alphabet, borders)];
}

function toldAlike(line: EntryLine, { is, last, next }: Borders): readonly [again: Longest, back: Longest] {
  const n = line.length;
  const [again, back] = [newLongest(n), newLongest(n)];
  const entries = Int32Array.from(line);
  const fellows = fellowsOf(entries);
  // Lengths of the stretches from the place after i, and from i, by the other place; what is unlike is not looked up.
  let after = new Int32Array(n + 1);
  let here = new Int32Array(n + 1);
  let backAfter = new Int32Array(n + 1);
  let backHere = new Int32Array(n + 1);
  for (let i = n - 1; i > 0; i--) {
    const entry = entries[i + 1];
    for (const j of fellows[i]!) {
      if (j >= i) break;
      const k = entries[j + 1] === entry && i + 1 < n ? after[j + 1]! + 1 : 1;
      const b = j > 0 && entries[j - 1] === entry ? backAfter[j - 1]! + 1 : 1;
      here[j] = k;
      backHere[j] = b;
      keep(again, i, k, last[j + k]! - j, is[j]!);
      keep(back, i, b, j + 1 - next[j + 1 - b]!, is[j + 1]!);
    }
    [after, here] = [here, after];
    [backAfter, backHere] = [backHere, backAfter];
  }
  return [again, back];
}

/** The longest stretches that were told before at any height. */
function toldHigher(line: EntryLine, { form, height }: Alphabet, { is, last }: Borders): Longest {
  const n = line.length;
  const moved = newLongest(n);
  const forms = Int32Array.from(line, form);
  const heights = Int32Array.from(line, height);
  const fellows = fellowsOf(forms);
  let after = new Int32Array(n + 1);
  let here = new Int32Array(n + 1);
  for (let i = n - 1; i > 0; i--) {
    const shape = forms[i + 1];
    const rise = heights[i + 1]! - heights[i]!;
    for (const j of fellows[i]!) {
      if (j >= i) break;
      const goesOn = i + 1 < n && forms[j + 1] === shape && heights[j + 1]! - heights[j]! === rise;
      const k = goesOn ? after[j + 1]! + 1 : 1;
      here[j] = k;
      keep(moved, i, k, last[j + k]! - j, is[j]!);
    }
    [after, here] = [here, after];
  }
  return moved;
}

function newLongest(n: number): Longest {
  const none = () => new Int32Array(n);
  return [none(), none(), none(), none()];
}

/** Keeps a stretch where it is the longest so far of its kinds; one that begins at a border begins anywhere, too. */
function keep(
  [open, ended, begun, whole]: Longest,
  i: number,
  length: number,
  toBorder: number,
  begins: number,
): void {
  if (length > open[i]!) open[i] = length;
  if (toBorder > ended[i]!) ended[i] = toBorder;
  if (begins === 0) return;
  if (length > begun[i]!) begun[i] = length;
  if (toBorder > whole[i]!) whole[i] = toBorder;
}

/** How far a line reads the same from a place on as from there back; the entry before the place left out, or not. */
export function turnedBack(line: EntryLine, i: number, skip: 0 | 1): number {
  let k = 0;
  while (i + k < line.length && i - 1 - skip - k >= 0 && line[i + k] === line[i - 1 - skip - k]) k++;
  return k;
}
