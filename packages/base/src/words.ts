/**
 * A number of things.
 * @param count how many
 * @param one the word for one of them
 * @param more the word for none or several
 * @example many(2, "pick") // "2 picks"
 */
export function many(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}

/**
 * Parts put after one another as a sentence lists them.
 * @param parts what is listed, each as it is to stand
 * @param last the word before the last of them
 * @example listed(["a", "b", "c"]) // "a, b and c"
 */
export function listed(parts: readonly string[], last: "and" | "or" = "and"): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} ${last} ${parts.at(-1)}`;
}

/**
 * Numbers in ascending order as the runs they make.
 * @param numbers whole numbers, each greater than the one before
 * @param most runs that are written out; what is behind them is only counted
 * @param between what stands between two runs
 * @example runsOf([1, 2, 3, 7, 9], 2) // "1-3, 7 and 1 more"
 */
export function runsOf(numbers: readonly number[], most = 6, between = ", "): string {
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run !== undefined && number === run[1] + 1) run[1] = number;
    else runs.push([number, number]);
  }
  const shown = runs.slice(0, most).map(([a, b]) => (a === b ? `${a}` : `${a}-${b}`));
  const left = runs.slice(most).reduce((sum, [a, b]) => sum + b - a + 1, 0);
  return left === 0 ? shown.join(between) : `${shown.join(between)} and ${left} more`;
}

/**
 * A sentence, made of what it tells of and of nothing else.
 * @param of what it tells of, as data
 */
export type Sentence<Of> = (of: Of) => string;
