import type { Alphabet, EntryLine } from "./line.js";
import type { Keep } from "./suggestion.js";

/** Straight runs that one entry breaks. */
export function byRuns(line: EntryLine, { form, height, next }: Alphabet, keep: Keep): void {
  const n = line.length;
  const step = (i: number) =>
    i > 0 && i < n && form(line[i]!) === 1 && form(line[i - 1]!) === 1
      ? height(line[i]!) - height(line[i - 1]!)
      : 0;
  const run = (i: number, by: number, way: 1 | -1) => {
    let k = 0;
    while (step(way === 1 ? i + k : i - k) === by && k < n) k++;
    return k;
  };
  for (let i = 0; i < n; i++) {
    for (const by of [1, -1] as const) {
      const before = run(i - 1, by, -1);
      const after = run(i + 2, by, 1);
      const from = i > 0 ? line[i - 1] : undefined;
      const meant = from === undefined ? undefined : next(from, by);
      const fits = meant !== undefined && (i + 1 >= n || (i + 1 < n && next(meant, by) === line[i + 1]));
      if (fits && meant !== line[i] && before + after > 1) {
        keep({ edit: "change", at: i, to: meant }, before + after + 2, i);
      }
      if (i === 0 && n > 3) {
        const first = next(line[1]!, by === 1 ? -1 : 1);
        if (first !== undefined && first !== line[0] && after > 1)
          keep({ edit: "change", at: 0, to: first }, after + 1, 0);
      }
      // One left out between two, or one too many.
      if (i > 0 && meant !== undefined && next(meant, by) === line[i]) {
        const size = run(i - 1, by, -1) + run(i + 1, by, 1);
        if (size > 1) keep({ edit: "insert", at: i, to: meant }, size + 2, i);
      }
      if (crossed(line, i, by, next)) {
        const size = run(i - 1, by, -1) + run(i + 3, by, 1);
        keep({ edit: "swap", at: i, with: i + 1 }, size + 3, i);
      }
      if (i > 0 && i + 1 < n && meant === line[i + 1]) {
        const size = run(i - 1, by, -1) + run(i + 2, by, 1);
        if (size > 1) keep({ edit: "remove", at: i }, size + 2, i);
      }
    }
  }
}

/** Whether two neighbours, exchanged, go on in a straight run on both sides, or on the only side that there is. */
function crossed(line: EntryLine, i: number, by: 1 | -1, next: Alphabet["next"]): boolean {
  const [one, other] = [line[i]!, line[i + 1]];
  if (other === undefined || next(other, by) !== one) return false;
  const fitsBefore = i === 0 || next(line[i - 1]!, by) === other;
  const fitsAfter = i + 2 >= line.length || next(one, by) === line[i + 2];
  return fitsBefore && fitsAfter && line.length > 4;
}
