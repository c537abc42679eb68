/**
 * The known word nearest to one that is not known, by the fewest letters changed, added, left out or swapped with their
 * neighbour; large and small letters are alike.
 * @param word what was written
 * @param known what could have been meant; of two as near, the first is taken
 * @returns the known word, or undefined when none is near enough to be meant (more than a third of its letters, rounded, differ)
 * @example nearest("thredding", ["threading", "ends"]) // "threading"
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const given = word.slice(0, 64).toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.round(given.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - given.length) >= least) continue;
    const apart = distance(given, candidate.toLowerCase());
    if (apart < least) {
      least = apart;
      best = candidate;
    }
  }
  return best;
}

/** Letters changed, added, left out or swapped with their neighbour between two words (optimal string alignment). */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, before[j - 2]! + 1);
      }
      row.push(least);
    }
    before = above;
    above = row;
  }
  return above[b.length]!;
}
