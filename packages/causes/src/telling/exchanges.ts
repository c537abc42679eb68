import type { EntryLine } from "./line.js";
import type { Suggestion } from "./suggestion.js";

/** Two changes that make each of two entries the other are one exchange; so are neighbours that exchanged would do. */
export function exchanges(line: EntryLine, all: readonly Suggestion[]): Suggestion[] {
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
function neighbours(line: EntryLine, keep: (a: number, b: number, likeness: number) => void): void {
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
