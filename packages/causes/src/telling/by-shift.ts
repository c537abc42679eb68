import type { Alphabet, EntryLine } from "./line.js";
import type { Keep } from "./suggestion.js";

/** Stretches that are as a stretch elsewhere, but so much higher or lower. */
export function byShift(line: EntryLine, alphabet: Alphabet, keep: Keep): void {
  const { form, height } = alphabet;
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
  const one = oneApart(line, alphabet);
  for (let p = 0; p < n; p++) {
    for (const q of one(p)) {
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
        if (before + after < (before === 0 || after === 0 ? 4 : 2)) continue;
        const entries = Array.from({ length }, (_, k) => line[q + step * k]!);
        keep({ edit: "shift", from: p, to: p + last, entries }, before + after + length, p, last + p, q);
      }
    }
  }
}

/** Rows that are shifted together, at most. */
const MOST_SHIFTED = 16;

/** For each place the places, ascending, whose entries have the form of its own and lie one higher or lower. */
function oneApart(line: EntryLine, { form, height }: Alphabet): (p: number) => readonly number[] {
  const places = new Map<string, number[]>();
  const keys = line.map((entry) => [form(entry), height(entry)] as const);
  keys.forEach(([shape, high], i) => {
    const key = `${shape} ${high}`;
    const same = places.get(key);
    if (same === undefined) places.set(key, [i]);
    else same.push(i);
  });
  return (p) => {
    const [shape, high] = keys[p]!;
    const lower = places.get(`${shape} ${high - 1}`) ?? [];
    const higher = places.get(`${shape} ${high + 1}`) ?? [];
    return [...lower, ...higher].sort((a, b) => a - b);
  };
}
