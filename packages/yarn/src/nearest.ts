/** Single-letter insertions, deletions and replacements between two words. */
function distance(from: string, to: string): number {
  let previous = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const replaced = previous[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      row.push(Math.min(replaced, previous[j]! + 1, row[j - 1]! + 1));
    }
    previous = row;
  }
  return previous[to.length]!;
}

/**
 * The known word most like `word`, the first of equals; undefined when less than half of it agrees.
 * @example nearest("wosted", ["cotton", "worsted"]) // "worsted"
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const asked = word.toLowerCase();
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const far = distance(asked, name.toLowerCase());
    if (far < least && far * 2 <= Math.max(asked.length, name.length)) {
      best = name;
      least = far;
    }
  }
  return best;
}
