/**
 * How long the shortest telling of a line is, in bits. A line is told in phrases: an entry by itself, a straight run, a
 * stretch told before, told before backwards, or told before so many shafts higher (J. Rissanen, "Modeling by shortest
 * data description", Automatica 14, 1978, from memory; the phrases are ours). As any end of a phrase is a phrase, the
 * longest one is the best, and one pass from the end finds the least sum.
 */
import { fellowsOf } from "./alike.js";
import type { Alphabet, EntryLine } from "./line.js";

/** For each place the longest stretch from there on that was told before: as it is, backwards, and at another height. */
interface Told {
  readonly again: Int32Array;
  readonly back: Int32Array;
  readonly moved: Int32Array;
}

/** The shortest telling of a line. */
export interface Telling {
  readonly bits: number;
  /** The places, ascending from 0, at which a phrase begins. */
  readonly seams: readonly number[];
}

/** Bits of the shortest telling of a line. */
export function tellingLength(line: EntryLine, alphabet: Alphabet): number {
  return telling(line, alphabet).bits;
}

/** The shortest telling of a line: how many bits it takes, and where its phrases begin. */
export function telling(line: EntryLine, alphabet: Alphabet): Telling {
  const n = line.length;
  const place = Math.log2(n + 1);
  const kinds = Math.log2(alphabet.size() + 1);
  const copy = 2 * place + 1.5;
  const beside = place + 3;
  const { again, back, moved } = toldBefore(line, alphabet);
  const runs = alphabet.runs ? runLengths(line, alphabet) : undefined;
  const first = firsts(line);
  const best = new Float64Array(n + 1);
  const phrase = new Int32Array(n);
  for (let i = n - 1; i >= 0; i--) {
    const before = i === 0 ? -1 : line[i - 1]!;
    const fresh = alphabet.fresh(line[i]!, before);
    let least = best[i + 1]! + (first[i] === 1 ? fresh : Math.min(fresh, kinds + 1.5));
    phrase[i] = 1;
    const take = (length: number, bits: number) => {
      if (bits + best[i + length]! >= least) return;
      least = bits + best[i + length]!;
      phrase[i] = length;
    };
    if (again[i]! > 1) take(again[i]!, copy);
    if (back[i]! > 1) take(back[i]!, copy);
    if (moved[i]! > 2) take(moved[i]!, copy + kinds);
    // What goes on as just before, and what turns back here, is told without its place.
    const same = sameAsLast(line, i);
    if (same > 1) take(same, place + 1.5);
    const turned = Math.max(turnsBack(line, i, 0), turnsBack(line, i, 1));
    if (turned > 1) take(turned, beside);
    const run = runs?.[i] ?? 0;
    if (run > 2) take(run, kinds + place + 2.5);
    best[i] = least;
  }
  const seams: number[] = [];
  for (let i = 0; i < n; i += phrase[i]!) seams.push(i);
  return { bits: best[0]!, seams };
}

function sameAsLast(line: EntryLine, i: number): number {
  if (i === 0) return 0;
  let k = 0;
  while (i + k < line.length && line[i + k] === line[i - 1]) k++;
  return k;
}

/** How far a line reads the same from a place on as from there back; the entry before the place left out, or not. */
function turnsBack(line: EntryLine, i: number, skip: 0 | 1): number {
  let k = 0;
  while (i + k < line.length && i - 1 - skip - k >= 0 && line[i + k] === line[i - 1 - skip - k]) k++;
  return k;
}

/** 1 where an entry comes for the first time. */
function firsts(line: EntryLine): Uint8Array {
  const seen = new Set<number>();
  const first = new Uint8Array(line.length);
  line.forEach((entry, i) => {
    if (seen.has(entry)) return;
    seen.add(entry);
    first[i] = 1;
  });
  return first;
}

function runLengths(line: EntryLine, { form, height }: Alphabet): Int32Array {
  const n = line.length;
  const run = new Int32Array(n);
  for (const step of [1, -1]) {
    let length = 1;
    for (let i = n - 1; i >= 0; i--) {
      const goesOn =
        i + 1 < n &&
        form(line[i]!) === 1 &&
        form(line[i + 1]!) === 1 &&
        height(line[i + 1]!) - height(line[i]!) === step;
      length = goesOn ? length + 1 : 1;
      if (length > run[i]!) run[i] = length;
    }
  }
  return run;
}

/** What of a line was told before. */
export function toldBefore(line: EntryLine, alphabet: Alphabet): Told {
  const n = line.length;
  const again = new Int32Array(n);
  const back = new Int32Array(n);
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
      if (k > again[i]!) again[i] = k;
      if (b > back[i]!) back[i] = b;
    }
    [after, here] = [here, after];
    [backAfter, backHere] = [backHere, backAfter];
  }
  return { again, back, moved: toldHigher(line, alphabet) };
}

/** For each place the longest stretch from there on that was told before at any height. */
function toldHigher(line: EntryLine, { form, height }: Alphabet): Int32Array {
  const n = line.length;
  const moved = new Int32Array(n);
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
      if (k > moved[i]!) moved[i] = k;
    }
    [after, here] = [here, after];
  }
  return moved;
}
