import type { Alphabet, EntryLine } from "./line.js";
import type { Keep } from "./suggestion.js";

/** Entries after which steps come again, at most. */
const MOST_STEPS = 4;

/** Steps that come again every so many entries, as two forth and one back, which one entry breaks. */
export function bySteps(line: EntryLine, { form, height, next }: Alphabet, keep: Keep): void {
  const n = line.length;
  const step = (i: number) =>
    i > 0 && i < n && form(line[i]!) === 1 && form(line[i - 1]!) === 1
      ? height(line[i]!) - height(line[i - 1]!)
      : Number.NaN;
  // The entry so much higher than another; undefined where the line has none.
  const higher = (entry: number, by: number) => {
    let at: number | undefined = entry;
    for (let k = 0; k < Math.abs(by) && at !== undefined; k++) at = next(at, by > 0 ? 1 : -1);
    return at;
  };
  for (let period = 2; period <= MOST_STEPS; period++) {
    // For how many entries from (or up to) here each step is as that a period before.
    const before = new Int32Array(n + 1);
    for (let i = period + 1; i < n; i++) before[i] = step(i) === step(i - period) ? before[i - 1]! + 1 : 0;
    const after = new Int32Array(n + 2);
    for (let i = n - 1; i > period; i--) after[i] = step(i) === step(i - period) ? after[i + 1]! + 1 : 0;
    for (let i = period + 1; i < n; i++) {
      const regular = before[i - 1]!;
      if (regular < 2 || step(i) === step(i - period) || Number.isNaN(step(i - period))) continue;
      const meant = higher(line[i - 1]!, step(i - period));
      if (meant === undefined) continue;
      const rest = (from: number) => Math.max(after[from] ?? 0, after[from + period] ?? 0);
      keep({ edit: "change", at: i, to: meant }, regular + rest(i + 2), i, i + 1);
      keep({ edit: "insert", at: i, to: meant }, regular + rest(i + 1), i, i + 1);
      if (meant === line[i + 1]) {
        keep({ edit: "remove", at: i }, regular + rest(i + 2), i, i + 1);
        keep({ edit: "swap", at: i, with: i + 1 }, regular + rest(i + 3), i, i + 1);
      }
    }
  }
}
