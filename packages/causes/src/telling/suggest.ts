/**
 * Edits that a line suggests by its likeness to itself. Two stretches of a line that are alike, read the same way or one
 * of them backwards, but for one entry: then that entry was written for another, or left out, or put in.
 */
import type { Alphabet, Edit, Line } from "./line.js";

/** A stretch of likeness that counts for less than this says nothing. */
const LEAST_LIKENESS = 2.5;

/** An edit, and how much of the line is alike about it. */
export interface Suggestion {
  readonly edit: Edit;
  readonly likeness: number;
}

/** The edits suggested, those with the most likeness about them first. */
export function suggestions(line: Line, alphabet: Alphabet): Suggestion[] {
  const found = new Map<string, Suggestion>();
  const keep = (edit: Edit, likeness: number) => {
    if (likeness < LEAST_LIKENESS) return;
    const key = keyOf(edit);
    const before = found.get(key);
    if (before === undefined || before.likeness < likeness) found.set(key, { edit, likeness });
  };
  byLikeness(line, keep);
  byShift(line, alphabet, keep);
  if (alphabet.runs) byRuns(line, alphabet, keep);
  const all = [...found.values()];
  return [...all, ...exchanges(line, all)].sort((a, b) => b.likeness - a.likeness);
}

type Keep = (edit: Edit, likeness: number) => void;

function keyOf(edit: Edit): string {
  return JSON.stringify(edit);
}

function byLikeness(line: Line, keep: Keep): void {
  const n = line.length;
  const x = Int32Array.from(line);
  // Entries that go on as the one before say little: stretches count by the entries that do not.
  const weight = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) weight[i + 1] = weight[i]! + (i > 0 && x[i] === x[i - 1] ? 0.1 : 1);
  const weigh = (from: number, to: number) => weight[to]! - weight[from]!;
  // Runs from (i, j) to the right and up to (i, j) from the left, with a border of zeros; and with j read backwards.
  const w = n + 2;
  const right = new Int16Array(w * w);
  const left = new Int16Array(w * w);
  const back = new Int16Array(w * w);
  for (let i = n; i >= 1; i--) {
    for (let j = n; j >= 1; j--) {
      if (x[i - 1] === x[j - 1]) right[i * w + j] = right[(i + 1) * w + j + 1]! + 1;
    }
    for (let j = 1; j <= n; j++) {
      if (x[i - 1] === x[j - 1]) back[i * w + j] = back[(i + 1) * w + j - 1]! + 1;
    }
  }
  for (let i = 1; i <= n; i++) {
    for (let j = 1; j <= n; j++) {
      if (x[i - 1] === x[j - 1]) left[i * w + j] = left[(i - 1) * w + j - 1]! + 1;
    }
  }
  const tell = (edit: Edit, p: number, a: number, b: number, edges: boolean) => {
    if (a + b === 0 || ((a === 0 || b === 0) && !edges)) return;
    keep(edit, weigh(p - a, p) + weigh(Math.min(n, p + 1), Math.min(n, p + 1 + b)));
  };
  for (let p = 1; p <= n; p++) {
    for (let q = 1; q <= n; q++) {
      const to = x[q - 1]!;
      // As it is: what is left of q should be left of p, and what is right of it right of it.
      const a = left[(p - 1) * w + q - 1]!;
      const edge = p === 1 || p === n || q === 1 || q === n;
      // Backwards: what is right of q should be left of p.
      const c = back[(q + 1) * w + p - 1]!;
      if (p !== q) {
        if (x[p - 1] !== to) {
          const b = right[(p + 1) * w + q + 1]!;
          if (a + b > 1) tell({ edit: "change", at: p - 1, to }, p - 1, a, b, edge);
          const d = back[(p + 1) * w + q - 1]!;
          if (c + d > 1) tell({ edit: "change", at: p - 1, to }, p - 1, c, d, edge);
        }
        const gone = right[(p + 1) * w + q]!;
        if (a + gone > 2) tell({ edit: "remove", at: p - 1 }, p - 1, a, gone, p === 1 || p === n);
        const more = right[p * w + q + 1]!;
        if (a + more > 2) tell({ edit: "insert", at: p - 1, to }, p - 1, a, more, p === 1);
      }
      const goneBack = back[(p + 1) * w + q]!;
      const cBack = back[(q + 1) * w + p - 1]!;
      if (cBack + goneBack > 2)
        tell({ edit: "remove", at: p - 1 }, p - 1, cBack, goneBack, p === 1 || p === n);
      const moreBack = back[p * w + q - 1]!;
      if (c + moreBack > 2) tell({ edit: "insert", at: p - 1, to }, p - 1, c, moreBack, p === 1);
    }
  }
  // What was left out at the very end.
  for (let q = 1; q <= n; q++) {
    const to = x[q - 1]!;
    const a = left[n * w + q - 1]!;
    if (a > 2 && q <= n) keep({ edit: "insert", at: n, to }, weigh(n - a, n));
    const c = back[(q + 1) * w + n]!;
    if (c > 2) keep({ edit: "insert", at: n, to }, weigh(n - c, n));
  }
}

/** Stretches that are as a stretch elsewhere, but so much higher or lower. */
function byShift(line: Line, { form, height }: Alphabet, keep: Keep): void {
  const n = line.length;
  const apart = (p: number, q: number) => {
    if (p < 0 || q < 0 || p >= n || q >= n) return Number.NaN;
    if (line[p] === line[q]) return 0;
    return form(line[p]!) === form(line[q]!) ? height(line[q]!) - height(line[p]!) : Number.NaN;
  };
  const likeness = (p: number, q: number, step: 1 | -1, way: 1 | -1) => {
    let k = 0;
    while (k < 8 && apart(p + way * k, q + way * step * k) === 0) k++;
    return k;
  };
  for (let p = 0; p < n; p++) {
    for (let q = 0; q < n; q++) {
      if (p === q || Math.abs(apart(p, q)) !== 1) continue;
      const by = apart(p, q);
      for (const step of [1, -1] as const) {
        // The stretch begins here, where what is before is alike.
        if (apart(p - 1, q - step) === by) continue;
        let last = 0;
        for (let k = 0; k < MOST_SHIFTED; k++) {
          const here = apart(p + k, q + step * k);
          if (here === by) last = k;
          else if (here !== 0 || form(line[p + k]!) !== 0) break;
        }
        const length = last + 1;
        if (length < 2 || Math.abs(p - q) < length) continue;
        const before = likeness(p - 1, q - step, step, -1);
        const after = likeness(p + length, q + step * length, step, 1);
        if (before + after < 3 || (before === 0 && p > 0) || (after === 0 && p + length < n)) continue;
        const entries = Array.from({ length }, (_, k) => line[q + step * k]!);
        keep({ edit: "shift", from: p, to: p + last, entries }, before + after + length);
      }
    }
  }
}

/** Rows that are shifted together, at most. */
const MOST_SHIFTED = 16;

/** Straight runs that one entry breaks. */
function byRuns(line: Line, { form, height, next }: Alphabet, keep: Keep): void {
  const n = line.length;
  const step = (i: number) =>
    i > 0 && i < n && form(line[i]!) === 1 && form(line[i - 1]!) === 1
      ? height(line[i]!) - height(line[i - 1]!)
      : 0;
  const run = (i: number, by: number, way: 1 | -1) => {
    let k = 0;
    while (step(way === 1 ? i + k : i - k) === by && k < n) k++;
    return k;
  };
  for (let i = 0; i < n; i++) {
    for (const by of [1, -1] as const) {
      const before = run(i - 1, by, -1);
      const after = run(i + 2, by, 1);
      const from = i > 0 ? line[i - 1] : undefined;
      const meant = from === undefined ? undefined : next(from, by);
      const fits = meant !== undefined && (i + 1 >= n || (i + 1 < n && next(meant, by) === line[i + 1]));
      if (fits && meant !== line[i] && before + after > 1) {
        keep({ edit: "change", at: i, to: meant }, before + after + 2);
      }
      if (i === 0 && n > 3) {
        const first = next(line[1]!, by === 1 ? -1 : 1);
        if (first !== undefined && first !== line[0] && after > 1)
          keep({ edit: "change", at: 0, to: first }, after + 1);
      }
      // One left out between two, or one too many.
      if (i > 0 && meant !== undefined && next(meant, by) === line[i]) {
        const size = run(i - 1, by, -1) + run(i + 1, by, 1);
        if (size > 1) keep({ edit: "insert", at: i, to: meant }, size + 2);
      }
      if (crossed(line, i, by, next)) {
        const size = run(i - 1, by, -1) + run(i + 3, by, 1);
        keep({ edit: "swap", at: i, with: i + 1 }, size + 3);
      }
      if (i > 0 && i + 1 < n && meant === line[i + 1]) {
        const size = run(i - 1, by, -1) + run(i + 2, by, 1);
        if (size > 1) keep({ edit: "remove", at: i }, size + 2);
      }
    }
  }
}

/** Whether two neighbours, exchanged, go on in a straight run on both sides, or on the only side that there is. */
function crossed(line: Line, i: number, by: 1 | -1, next: Alphabet["next"]): boolean {
  const [one, other] = [line[i]!, line[i + 1]];
  if (other === undefined || next(other, by) !== one) return false;
  const fitsBefore = i === 0 || next(line[i - 1]!, by) === other;
  const fitsAfter = i + 2 >= line.length || next(one, by) === line[i + 2];
  return fitsBefore && fitsAfter && line.length > 4;
}

/** Two changes that make each of two entries the other are one exchange; so are neighbours that exchanged would do. */
function exchanges(line: Line, all: readonly Suggestion[]): Suggestion[] {
  const changes = all.flatMap(({ edit, likeness }) =>
    edit.edit === "change" ? [{ ...edit, likeness }] : [],
  );
  const byPair = new Map<string, (typeof changes)[number][]>();
  for (const change of changes) {
    const key = `${line[change.at]}>${change.to}`;
    const same = byPair.get(key);
    if (same === undefined) byPair.set(key, [change]);
    else same.push(change);
  }
  const found = new Map<string, Suggestion>();
  const keep = (a: number, b: number, likeness: number) => {
    if (line[a] === line[b]) return;
    const [at, other] = a < b ? [a, b] : [b, a];
    const key = `${at} ${other}`;
    const before = found.get(key);
    if (before === undefined || before.likeness < likeness)
      found.set(key, { edit: { edit: "swap", at, with: other }, likeness });
  };
  for (const one of changes.slice(0, 400)) {
    const others = byPair.get(`${one.to}>${line[one.at]}`) ?? [];
    for (const other of others.slice(0, 20)) keep(one.at, other.at, one.likeness + other.likeness);
    // Beside it.
    for (const beside of [one.at - 1, one.at + 1]) {
      if (line[beside] === one.to) keep(one.at, beside, one.likeness);
    }
  }
  neighbours(line, keep);
  return [...found.values()];
}

/** Neighbours that are crossed beside a stretch that is not: a b in one copy, b a in the other. */
function neighbours(line: Line, keep: (a: number, b: number, likeness: number) => void): void {
  const places = new Map<string, number[]>();
  for (let i = 0; i + 1 < line.length; i++) {
    const key = `${line[i]} ${line[i + 1]}`;
    const same = places.get(key);
    if (same === undefined) places.set(key, [i]);
    else same.push(i);
  }
  const alike = (p: number, q: number, step: 1 | -1) => {
    let a = 0;
    while (line[p - 1 - a] !== undefined && line[p - 1 - a] === line[step === 1 ? q - 1 - a : q + 2 + a]) a++;
    let b = 0;
    while (line[p + 2 + b] !== undefined && line[p + 2 + b] === line[step === 1 ? q + 2 + b : q - 1 - b]) b++;
    return a + b;
  };
  for (let p = 0; p + 1 < line.length; p++) {
    if (line[p] === line[p + 1]) continue;
    for (const q of (places.get(`${line[p + 1]} ${line[p]}`) ?? []).slice(0, 30)) {
      const forward = alike(p, q, 1);
      if (forward > 2) keep(p, p + 1, forward + 2);
    }
    for (const q of (places.get(`${line[p]} ${line[p + 1]}`) ?? []).slice(0, 30)) {
      if (q === p) continue;
      const backward = alike(p, q, -1);
      if (backward > 2) keep(p, p + 1, backward + 2);
    }
  }
}
