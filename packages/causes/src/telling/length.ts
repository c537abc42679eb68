/**
 * How long the shortest telling of a line is, in bits. A line is told in phrases: an entry by itself, a straight run, a
 * stretch told before, told before backwards, or told before so many shafts higher (J. Rissanen, "Modeling by shortest
 * data description", Automatica 14, 1978, from memory; the phrases are ours). As any end of a phrase is a phrase, the
 * longest one is the best, and one pass from the end finds the least sum.
 */
import type { Alphabet, Line } from "./line.js";

/** For each place the longest stretch from there on that was told before: as it is, backwards, and at another height. */
interface Told {
  readonly again: Int32Array;
  readonly back: Int32Array;
  readonly moved: Int32Array;
}

/** Bits of the shortest telling of a line. */
export function tellingLength(line: Line, alphabet: Alphabet): number {
  const n = line.length;
  if (n === 0) return 0;
  const place = Math.log2(n + 1);
  const kinds = Math.log2(alphabet.size() + 1);
  const copy = 2 * place + 1.5;
  const beside = place + 3;
  const { again, back, moved } = toldBefore(line, alphabet);
  const runs = alphabet.runs ? runLengths(line, alphabet) : undefined;
  const first = firsts(line);
  const best = new Float64Array(n + 1);
  for (let i = n - 1; i >= 0; i--) {
    const before = i === 0 ? -1 : line[i - 1]!;
    const fresh = alphabet.fresh(line[i]!, before);
    let least = best[i + 1]! + (first[i] === 1 ? fresh : Math.min(fresh, kinds + 1.5));
    if (again[i]! > 1) least = Math.min(least, copy + best[i + again[i]!]!);
    if (back[i]! > 1) least = Math.min(least, copy + best[i + back[i]!]!);
    if (moved[i]! > 2) least = Math.min(least, copy + kinds + best[i + moved[i]!]!);
    // What goes on as just before, and what turns back here, is told without its place.
    const same = sameAsLast(line, i);
    if (same > 1) least = Math.min(least, place + 1.5 + best[i + same]!);
    const turned = Math.max(turnsBack(line, i, 0), turnsBack(line, i, 1));
    if (turned > 1) least = Math.min(least, beside + best[i + turned]!);
    const run = runs?.[i] ?? 0;
    if (run > 2) least = Math.min(least, kinds + place + 2.5 + best[i + run]!);
    best[i] = least;
  }
  return best[0]!;
}

function sameAsLast(line: Line, i: number): number {
  if (i === 0) return 0;
  let k = 0;
  while (i + k < line.length && line[i + k] === line[i - 1]) k++;
  return k;
}

/** How far a line reads the same from a place on as from there back; the entry before the place left out, or not. */
function turnsBack(line: Line, i: number, skip: 0 | 1): number {
  let k = 0;
  while (i + k < line.length && i - 1 - skip - k >= 0 && line[i + k] === line[i - 1 - skip - k]) k++;
  return k;
}

/** 1 where an entry comes for the first time. */
function firsts(line: Line): Uint8Array {
  const seen = new Set<number>();
  const first = new Uint8Array(line.length);
  line.forEach((entry, i) => {
    if (seen.has(entry)) return;
    seen.add(entry);
    first[i] = 1;
  });
  return first;
}

function runLengths(line: Line, { form, height }: Alphabet): Int32Array {
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

function toldBefore(line: Line, { form, height }: Alphabet): Told {
  const n = line.length;
  const entries = Int32Array.from(line);
  const forms = entries.map((entry) => form(entry));
  const heights = entries.map((entry) => height(entry));
  const again = new Int32Array(n);
  const back = new Int32Array(n);
  const moved = new Int32Array(n);
  let after = new Int32Array(n + 1);
  let here = new Int32Array(n + 1);
  let movedAfter = new Int32Array(n + 1);
  let movedHere = new Int32Array(n + 1);
  let backAfter = new Int32Array(n + 1);
  let backHere = new Int32Array(n + 1);
  for (let i = n - 1; i > 0; i--) {
    const entry = entries[i]!;
    const shape = forms[i]!;
    const high = heights[i]!;
    let longest = 0;
    let longestMoved = 0;
    let longestBack = 0;
    for (let j = 0; j < i; j++) {
      let k = 0;
      let m = 0;
      let b = 0;
      if (entry === entries[j]) {
        k = after[j + 1]! + 1;
        b = (j > 0 ? backAfter[j - 1]! : 0) + 1;
        if (k > longest) longest = k;
        if (b > longestBack) longestBack = b;
      }
      if (shape === forms[j]) {
        const goesOn =
          i + 1 < n &&
          forms[i + 1] === forms[j + 1] &&
          heights[i + 1]! - heights[j + 1]! === high - heights[j]!;
        m = goesOn ? movedAfter[j + 1]! + 1 : 1;
        if (m > longestMoved) longestMoved = m;
      }
      here[j] = k;
      movedHere[j] = m;
      backHere[j] = b;
    }
    again[i] = longest;
    moved[i] = longestMoved;
    back[i] = longestBack;
    [after, here] = [here, after];
    [movedAfter, movedHere] = [movedHere, movedAfter];
    [backAfter, backHere] = [backHere, backAfter];
  }
  return { again, back, moved };
}
