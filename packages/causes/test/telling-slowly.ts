import type { Alphabet, EntryLine, LineEdit } from "../src/telling/line.js";
import type { Keep } from "../src/telling/suggestion.js";

/** Every edit that likeness suggests, by comparing every place with every other, entry by entry. */
export function byLikenessSlowly(line: EntryLine, keep: Keep): void {
  const n = line.length;
  const reach = (i: number, j: number, step: 1 | -1, other: 1 | -1) => {
    let k = 0;
    while (line[i + step * k] !== undefined && line[i + step * k] === line[j + other * k]) k++;
    return k;
  };
  const weigh = (from: number, to: number) =>
    line.slice(from, to).reduce((sum, entry, i) => sum + (line[from + i - 1] === entry ? 0.1 : 1), 0);
  for (let p = 0; p <= n; p++) {
    for (let q = 0; q < n; q++) {
      const tell = (edit: LineEdit, a: number, b: number, least: number, atEnd: boolean) => {
        if (a + b < least || (a * b === 0 && !atEnd)) return;
        keep(edit, weigh(p - a, p) + weigh(Math.min(n, p + 1), Math.min(n, p + 1 + b)), p, q);
      };
      const put: LineEdit = { edit: "insert", at: p, to: line[q]! };
      const a = reach(p - 1, q - 1, -1, -1);
      const c = reach(p - 1, q + 1, -1, 1);
      if (p === n) {
        if (a > 2) tell(put, a, 0, 0, true);
        if (c > 2) tell(put, c, 0, 0, true);
        continue;
      }
      const change: LineEdit = { edit: "change", at: p, to: line[q]! };
      const ends = p === 0 || p === n - 1;
      const anyEnd = ends || q === 0 || q === n - 1;
      if (line[p] !== line[q]) {
        tell(change, a, reach(p + 1, q + 1, 1, 1), 2, anyEnd);
        tell(change, c, reach(p + 1, q - 1, 1, -1), 2, anyEnd);
      }
      if (p !== q) tell({ edit: "remove", at: p }, a, reach(p + 1, q, 1, 1), 3, ends);
      if (p !== q) tell(put, a, reach(p, q + 1, 1, 1), 3, p === 0);
      tell({ edit: "remove", at: p }, c, reach(p + 1, q, 1, -1), 3, ends);
      tell(put, c, reach(p, q - 1, 1, -1), 3, p === 0);
    }
  }
}

/** For each place the longest stretch from there on that comes before: as it is, backwards, and at another height. */
export function toldBeforeSlowly(
  line: EntryLine,
  { form, height }: Alphabet,
): Record<"again" | "back" | "moved", number[]> {
  const longest = (goesOn: (i: number, j: number, k: number) => boolean) =>
    line.map((_, i) => {
      let most = 0;
      for (let j = 0; j < i; j++) {
        let k = 0;
        while (i + k < line.length && goesOn(i, j, k)) k++;
        most = Math.max(most, k);
      }
      return most;
    });
  const high = (i: number) => height(line[i]!);
  return {
    again: longest((i, j, k) => line[i + k] === line[j + k]),
    back: longest((i, j, k) => line[i + k] === line[j - k]),
    moved: longest(
      (i, j, k) =>
        form(line[i + k]!) === form(line[j + k]!) && high(i + k) - high(i) === high(j + k) - high(j),
    ),
  };
}
