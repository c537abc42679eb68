import { type Alike, alikeBackwards, alikeOf, alikeOnwards, alikeTurned } from "./alike.js";
import type { EntryLine, LineEdit } from "./line.js";
import type { Keep } from "./suggestion.js";

/**
 * Edits of entries about which the line is as it is elsewhere, read the same way or backwards.
 * @param line the line
 * @param keep takes each edit down
 */
export function byLikeness(line: EntryLine, keep: Keep): void {
  const n = line.length;
  const x = Int32Array.from(line);
  const alike = alikeOf(x);
  const read = (lengths: Int32Array) => (i: number, j: number) => {
    const pair = alike.pair(i, j);
    return pair < 0 ? 0 : lengths[pair]!;
  };
  const right = read(alikeOnwards(alike));
  const left = read(alikeBackwards(alike));
  const turned = read(alikeTurned(alike));
  const weigh = weights(x);
  // What is alike on both sides of a place speaks, and on one side where the line ends at the other.
  const tell = (edit: LineEdit, p: number, q: number, a: number, b: number, atEnd: boolean) => {
    if (a + b === 0 || ((a === 0 || b === 0) && !atEnd)) return;
    keep(edit, weigh(p - a, p) + weigh(Math.min(n, p + 1), Math.min(n, p + 1 + b)), p, q);
  };
  for (let p = 0; p < n; p++) {
    const ends = p === 0 || p === n - 1;
    for (const q of comparable(alike, p, n)) {
      const to = x[q]!;
      // As it is: what is left of q should be left of p, and what is right of it right of it.
      const a = left(p - 1, q - 1);
      // Backwards: what is right of q should be left of p.
      const c = turned(q + 1, p - 1);
      if (p !== q) {
        if (x[p] !== to) {
          const atEnd = ends || q === 0 || q === n - 1;
          const b = right(p + 1, q + 1);
          if (a + b > 1) tell({ edit: "change", at: p, to }, p, q, a, b, atEnd);
          const d = turned(p + 1, q - 1);
          if (c + d > 1) tell({ edit: "change", at: p, to }, p, q, c, d, atEnd);
        }
        const gone = right(p + 1, q);
        if (a + gone > 2) tell({ edit: "remove", at: p }, p, q, a, gone, ends);
        const more = right(p, q + 1);
        if (a + more > 2) tell({ edit: "insert", at: p, to }, p, q, a, more, p === 0);
      }
      const goneBack = turned(p + 1, q);
      if (c + goneBack > 2) tell({ edit: "remove", at: p }, p, q, c, goneBack, ends);
      const moreBack = turned(p, q - 1);
      if (c + moreBack > 2) tell({ edit: "insert", at: p, to }, p, q, c, moreBack, p === 0);
    }
  }
  // What was left out at the very end.
  for (let q = 0; q < n; q++) {
    const to = x[q]!;
    const a = left(n - 1, q - 1);
    if (a > 2) keep({ edit: "insert", at: n, to }, weigh(n - a, n), n, q);
    const c = turned(q + 1, n - 1);
    if (c > 2) keep({ edit: "insert", at: n, to }, weigh(n - c, n), n, q);
  }
}

/** How much a stretch counts: entries that go on as the one before say little. */
function weights(x: Int32Array): (from: number, to: number) => number {
  const weight = new Float64Array(x.length + 1);
  for (let i = 0; i < x.length; i++) weight[i + 1] = weight[i]! + (i > 0 && x[i] === x[i - 1] ? 0.1 : 1);
  return (from, to) => weight[to]! - weight[from]!;
}

/**
 * The places, ascending, that a place may be compared with: those whose neighbour is like its own left one, and the ends
 * of the line, where nothing need be alike on the side that is not there. At the left end these are all.
 */
function comparable({ fellows }: Alike, p: number, n: number): readonly number[] {
  if (p === 0) return Array.from({ length: n }, (_, q) => q);
  const places = [0, n - 1];
  for (const j of fellows[p - 1]!) {
    if (j + 1 < n) places.push(j + 1);
    if (j > 0) places.push(j - 1);
  }
  return places.sort((a, b) => a - b).filter((place, i) => place !== places[i - 1]);
}
