import type { UnitDraft } from "@drawcord/units";
import type { Alphabet, EntryLine } from "./line.js";

/** A threading as a line of entries, and the entries back as the shafts of units. */
export interface ThreadingLine {
  readonly line: EntryLine;
  readonly alphabet: Alphabet;
  readonly shaftsOf: (entry: number) => readonly number[];
}

/**
 * A threading as a line: units that hang on the same shafts are one entry.
 * @param draft the threading, or its units as they are written
 * @param whole whether it is the whole threading
 */
export function threadingLine({ threading }: Pick<UnitDraft, "threading">, whole = true): ThreadingLine {
  const entries = new Map<string, number>();
  const shafts: (readonly number[])[] = [];
  const entryOf = (unit: readonly number[]) => {
    const key = unit.join();
    let entry = entries.get(key);
    if (entry === undefined) {
      entry = shafts.length;
      entries.set(key, entry);
      shafts.push(unit);
    }
    return entry;
  };
  const line = threading.map(entryOf);
  const forms = new Map<string, number>([
    ["", 0],
    ["0", 1],
  ]);
  const formOf = shafts.map((unit) => {
    const key = unit.map((shaft) => shaft - unit[0]!).join();
    if (!forms.has(key)) forms.set(key, forms.size);
    return forms.get(key)!;
  });
  const highest = threading.reduce((most, unit) => Math.max(most, unit.at(-1) ?? 0), 0);
  const form = (entry: number) => formOf[entry] ?? 1;
  const height = (entry: number) => shafts[entry]?.[0] ?? 0;
  const known = shafts.length;
  const kinds = Math.log2(known + 1);
  const isNear = (a: number, b: number) =>
    form(a) === 1 && form(b) === 1 && Math.abs(height(a) - height(b)) <= 1;
  // Threadings go by steps: the oftener a step comes, the less it takes to tell it.
  const step = (entry: number, before: number) =>
    form(entry) === 1 && form(before) === 1
      ? String(height(entry) - height(before))
      : `${form(before)} ${form(entry)}`;
  const steps = new Map<string, number>();
  line.forEach((entry, i) => {
    if (i > 0) steps.set(step(entry, line[i - 1]!), (steps.get(step(entry, line[i - 1]!)) ?? 0) + 1);
  });
  const raw = Math.log2(highest + 2) + 1.5;
  return {
    line,
    shaftsOf: (entry) => shafts[entry]!,
    alphabet: {
      size: () => known,
      form,
      height,
      runs: true,
      whole,
      fresh: (entry, before) => {
        if (before < 0) return raw;
        const times = steps.get(step(entry, before)) ?? 0;
        return 1.5 + Math.min(raw, Math.log2((line.length + 4) / (times + 0.5)));
      },
      mistaken: (meant, written) => (isNear(meant, written) ? 2 : kinds),
      apart: () => 1,
      roughness: () => 0,
      next: (entry, by) => {
        if (form(entry) !== 1) return undefined;
        const shaft = height(entry) + by;
        return shaft < 1 || shaft > highest + 1 ? undefined : entryOf([shaft]);
      },
    },
  };
}
