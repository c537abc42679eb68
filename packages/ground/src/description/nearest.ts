/** No name is as long as this, so that nothing longer is near one. */
const LONGEST = 40;

/**
 * The name nearest to what was written, or nothing when none is near.
 * @returns the name that takes the fewest letters changed, added or left out, two at the most
 */
export function nearest(written: string, names: readonly string[]): string | undefined {
  if (written.length > LONGEST) return undefined;
  const ranked = names
    .map((name) => ({ name, distance: distance(written, name.split(" ")[0]!) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  return best && best.distance <= 2 ? best.name : undefined;
}

/** Letters to change, add or leave out to turn one word into the other. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length]!;
}
