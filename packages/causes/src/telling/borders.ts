import type { Alphabet, EntryLine } from "./line.js";

/** Where motifs of a line begin and end: its ends, the edges of what is blank, and where phrases of a telling meet. */
export interface Borders {
  readonly count: number;
  /** 1 where a place (from 0 to the length of the line) is a border. */
  readonly is: Uint8Array;
  /** For each place the last border up to it. */
  readonly last: Int32Array;
  /** For each place the first border from it on. */
  readonly next: Int32Array;
}

/** The borders of a line, with places that were found to be some. */
export function bordersIn(line: EntryLine, { form }: Alphabet, places: readonly number[]): Borders {
  const n = line.length;
  const is = new Uint8Array(n + 1);
  is[0] = 1;
  is[n] = 1;
  for (let i = 1; i < n; i++) {
    if ((form(line[i]!) === 0) !== (form(line[i - 1]!) === 0)) is[i] = 1;
  }
  for (const place of places) is[place] = 1;
  const last = new Int32Array(n + 1);
  const next = new Int32Array(n + 1);
  let count = 0;
  for (let i = 0, before = 0; i <= n; i++) {
    if (is[i] === 1) before = i;
    count += is[i]!;
    last[i] = before;
  }
  for (let i = n, after = n; i >= 0; i--) {
    if (is[i] === 1) after = i;
    next[i] = after;
  }
  return { count, is, last, next };
}
