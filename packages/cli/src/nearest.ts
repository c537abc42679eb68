/**
 * The known name that a mistyped one most likely meant, or nothing when none is near: at most a third of its letters
 * changed, and never more than three.
 */
export function nearest(name: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.min(3, Math.max(1, Math.floor(name.length / 3))) + 1;
  for (const candidate of known) {
    const changes = distance(name.toLowerCase(), candidate.toLowerCase());
    if (changes < least) {
      least = changes;
      best = candidate;
    }
  }
  return best;
}

/** `; did you mean "check"?`, or nothing. */
export function didYouMean(name: string, known: readonly string[], dashes = ""): string {
  const meant = nearest(name, known);
  return meant === undefined ? "" : `; did you mean "${dashes}${meant}"?`;
}

/** Letters put in, left out, changed or swapped with their neighbour (optimal string alignment). */
function distance(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 3) return Number.POSITIVE_INFINITY;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      row[j] = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) row[j] = Math.min(row[j]!, before[j - 2]! + 1);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
}
