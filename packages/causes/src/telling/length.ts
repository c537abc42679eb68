/**
 * How long the shortest telling of a line is, in bits. A line is told in phrases: an entry by itself, a straight run, a
 * stretch told before, told before backwards, or told before so many shafts higher (J. Rissanen, "Modeling by shortest
 * data description", Automatica 14, 1978, from memory; the phrases are ours). As any end of a phrase is a phrase, the
 * longest one is the best, and one pass from the end finds the least sum. Weavers put whole motifs together: a stretch that
 * begins or ends where a motif does is told in few bits, and one that is broken off anywhere takes its place.
 */
import { bordersIn } from "./borders.js";
import type { Alphabet, EntryLine } from "./line.js";
import { longestTold, turnedBack } from "./told.js";

/** Bits of the kind of a phrase. */
const KIND = 2;

/** Bits of a turn in the middle of the whole line. */
const WHOLE = 1;

/** The shortest telling of a line. */
export interface Telling {
  readonly bits: number;
  /** The places, ascending from 0, at which a phrase begins. */
  readonly seams: readonly number[];
  /** The places at which phrases of more than an entry begin and end. */
  readonly met: readonly number[];
}

/** Where motifs of a line begin and end, by a first telling that knows of none but what is blank. */
export function motifsOf(line: EntryLine, alphabet: Alphabet): readonly number[] {
  return telling(line, alphabet, []).met;
}

/**
 * The shortest telling of a line: how many bits it takes, and where its phrases begin.
 * @param motifs where motifs begin and end, beside the ends of the line and the edges of what is blank
 */
export function telling(line: EntryLine, alphabet: Alphabet, motifs: readonly number[]): Telling {
  const borders = bordersIn(line, alphabet, motifs);
  const fresh = Float64Array.from(line, (entry, i) => alphabet.fresh(entry, line[i - 1] ?? -1));
  const n = line.length;
  const place = Math.log2(n + 1);
  const kinds = Math.log2(alphabet.size() + 1);
  const some = Math.log2(borders.count + 1);
  const anywhere = 1 + place;
  const atBorder = 1 + some;
  // By where a stretch told before begins and ends, as in `Longest`.
  const places = [2 * anywhere, anywhere + atBorder, anywhere + atBorder, 2 * atBorder] as const;
  const [again, back, moved] = longestTold(line, alphabet, borders);
  const runs = alphabet.runs ? runLengths(line, alphabet) : undefined;
  const first = firsts(line);
  const best = new Float64Array(n + 1);
  const goes = new Int32Array(n + 1);
  let least = 0;
  let far = 1;
  const phrase = (i: number, length: number, bits: number) => {
    const sum = best[i + length]! + bits;
    if (sum >= least) return;
    least = sum;
    far = length;
  };
  for (let i = n - 1; i >= 0; i--) {
    least = best[i + 1]! + (first[i] === 1 ? fresh[i]! : Math.min(fresh[i]!, kinds + 1.5));
    far = 1;
    for (let ends = 0; ends < 4; ends++) {
      if (again[ends]![i]! > 1) phrase(i, again[ends]![i]!, KIND + places[ends]!);
      if (back[ends]![i]! > 1) phrase(i, back[ends]![i]!, KIND + places[ends]!);
      if (moved[ends]![i]! > 2) phrase(i, moved[ends]![i]!, KIND + places[ends]! + kinds);
    }
    // What goes on as just before, and what turns back here, is told without its place.
    const same = sameAsLast(line, i);
    if (same > 1) phrase(i, same, place + 1.5);
    for (const skip of [0, 1] as const) {
      const turned = turnedBack(line, i, skip);
      if (turned < 2) continue;
      const whole = alphabet.whole && i + turned === n && i - skip === turned;
      phrase(i, turned, whole ? WHOLE : KIND + 1 + anywhere);
      const ended = i - skip - borders.next[i - skip - turned]!;
      if (ended > 1) phrase(i, ended, KIND + 1 + atBorder);
    }
    if (runs !== undefined && runs[i]! > 2) phrase(i, runs[i]!, kinds + place + 2.5);
    best[i] = least;
    goes[i] = far;
  }
  const seams: number[] = [];
  const met: number[] = [];
  for (let i = 0; i < n; i += goes[i]!) {
    seams.push(i);
    if (goes[i]! > 1) met.push(i, i + goes[i]!);
  }
  return { bits: best[0]!, seams, met };
}

function sameAsLast(line: EntryLine, i: number): number {
  if (i === 0) return 0;
  let k = 0;
  while (i + k < line.length && line[i + k] === line[i - 1]) k++;
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
