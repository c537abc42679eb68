import type { SlipReason } from "../slip.js";
import type { Alphabet, EntryLine } from "./line.js";

/** What a stretch of a line is like, once an edit is made. */
export interface Likeness {
  readonly like: "mirror" | "repeat" | "copy" | "turned" | "run";
  /** First and last place of the stretch about the edit, from 0. */
  readonly stretch: readonly [number, number];
  /** First and last place of the stretch that it is like; for a repeat the period is `by`. */
  readonly other?: readonly [number, number];
  readonly by?: number;
}

/** The longest likeness that a place of a line is in: the whole line first, then a straight run, then a copy. */
export function likenessAt(
  line: EntryLine,
  at: number,
  { form, height, runs }: Alphabet,
): Likeness | undefined {
  const n = line.length;
  const whole: readonly [number, number] = [0, n - 1];
  if (line.every((entry, i) => entry === line[n - 1 - i])) return { like: "mirror", stretch: whole };
  for (let by = 1; by * 2 <= n; by++) {
    if (line.every((entry, i) => i < by || entry === line[i - by]))
      return { like: "repeat", stretch: whole, by };
  }
  let best: Likeness | undefined;
  let longest = 2;
  const keep = (likeness: Likeness, length: number) => {
    if (length <= longest) return;
    longest = length;
    best = likeness;
  };
  if (runs) {
    for (const by of [1, -1]) {
      const goes = (i: number) =>
        form(line[i]!) === 1 && form(line[i + 1]!) === 1 && height(line[i + 1]!) - height(line[i]!) === by;
      let first = at;
      while (first > 0 && goes(first - 1)) first--;
      let last = at;
      while (last + 1 < n && goes(last)) last++;
      keep({ like: "run", stretch: [first, last] }, (last - first + 1) * 1.5);
    }
  }
  for (let q = 0; q < n; q++) {
    if (line[q] !== line[at]) continue;
    if (q !== at) {
      let a = 0;
      while (at - a > 0 && q - a > 0 && line[at - a - 1] === line[q - a - 1]) a++;
      let b = 0;
      while (at + b + 1 < n && q + b + 1 < n && line[at + b + 1] === line[q + b + 1]) b++;
      keep({ like: "copy", stretch: [at - a, at + b], other: [q - a, q + b] }, a + b + 1);
    }
    let a = 0;
    while (at - a > 0 && q + a + 1 < n && line[at - a - 1] === line[q + a + 1]) a++;
    let b = 0;
    while (at + b + 1 < n && q - b > 0 && line[at + b + 1] === line[q - b - 1]) b++;
    keep(
      { like: "turned", stretch: [at - a, at + b], other: [q - b, q + a] },
      q === at ? (a + b + 1) / 2 : a + b + 1,
    );
  }
  return best;
}

/**
 * A likeness as the reason of a slip.
 * @param of what the line is
 * @param whole that the line is the whole plan, and not only what is written of it
 */
export function likenessReason(
  likeness: Likeness | undefined,
  of: "threading" | "lifts",
  whole: boolean,
): SlipReason {
  const plan = { of, ...(!whole && { written: true as const }) };
  if (likeness === undefined) return { reason: "shorter", ...plan };
  const fromOne = ([first, last]: readonly [number, number]) => [first + 1, last + 1] as const;
  const { like, stretch } = likeness;
  switch (like) {
    case "mirror":
      return { reason: "mirror", ...plan };
    case "repeat":
      return { reason: "repeat", by: likeness.by!, ...plan };
    case "run":
      return { reason: "run", stretch: fromOne(stretch), ...plan };
    case "copy":
    case "turned":
      return { reason: like, stretch: fromOne(stretch), other: fromOne(likeness.other!), ...plan };
  }
}
