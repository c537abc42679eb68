/** `1 end`, `2 ends`. */
export function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}

/** Ascending numbers with their runs folded, at most eight of them: `1-3 7 9-12 and 30 more`. */
export function list(numbers: readonly number[]): string {
  const runs: { first: number; last: number }[] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run !== undefined && number === run.last + 1) run.last = number;
    else runs.push({ first: number, last: number });
  }
  const most = 8;
  const shown = runs
    .slice(0, most)
    .map(({ first, last }) => (first === last ? `${first}` : `${first}-${last}`));
  const rest = runs.slice(most).reduce((sum, { first, last }) => sum + last - first + 1, 0);
  return `${shown.join(" ")}${rest === 0 ? "" : ` and ${rest} more`}`;
}
