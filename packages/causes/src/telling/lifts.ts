import type { ShaftSet } from "@drawcord/ground";
import type { Alphabet, EntryLine, LineEdit } from "./line.js";
import { evened, evennessOf, isEven } from "./uneven.js";

/** Bits that tell that a row is not even where the others are. */
const UNEVEN = 5;

/** Bits of the outline of a row, at most: a row of many small squares has an order of its own. */
const MOST_BITS = 16;

/** A lift plan as a line of entries, and the entries back as lifts. */
export interface LiftsLine {
  readonly line: EntryLine;
  readonly alphabet: Alphabet;
  readonly shaftsOf: (entry: number) => ShaftSet;
  /** Edits of single shafts that the evenness of the other rows suggests. */
  readonly more: (line: EntryLine) => readonly LineEdit[];
}

/**
 * Lifts as a line: rows that draw the same shafts are one entry. A row is told by how its outline differs from that of the
 * row before: a figure grows and shrinks at its edges.
 * @param lifts the lift plan, or its lines as they are written
 * @param whole whether it is the whole plan as it is woven
 */
export function liftsLine(lifts: readonly ShaftSet[], whole = true): LiftsLine {
  const entries = new Map<string, number>();
  const rows: ShaftSet[] = [];
  const masks: Uint8Array[] = [];
  const highest = lifts.reduce((most, lift) => Math.max(most, lift.at(-1) ?? 0), 0);
  const forms = new Map<string, number>([["", 0]]);
  const formOf: number[] = [];
  const entryOf = (lift: ShaftSet) => {
    const key = lift.join();
    let entry = entries.get(key);
    if (entry === undefined) {
      entry = rows.length;
      entries.set(key, entry);
      rows.push(lift);
      const mask = new Uint8Array(highest + 2);
      for (const shaft of lift) mask[shaft] = 1;
      masks.push(mask);
      const form = lift.map((shaft) => shaft - lift[0]!).join();
      if (!forms.has(form)) forms.set(form, forms.size + 1);
      formOf.push(forms.get(form)!);
    }
    return entry;
  };
  const line = lifts.map(entryOf);
  const known = rows.length;
  const times = new Map<number, number>();
  for (const entry of line) times.set(entry, (times.get(entry) ?? 0) + 1);
  const kinds = Math.log2(known + 1);
  const wide = Math.log2(highest + 1);
  const empty = new Uint8Array(highest + 2);
  const told = new Map<number, number>();
  // Where the plan is even, half of an even row tells it, and a row that is not is one of few.
  const partners = evennessOf(lifts, highest);
  const half = partners && masks.map(() => undefined as Uint8Array | undefined);
  const halfOf = (entry: number) => {
    if (partners === undefined || half === undefined || entry < 0 || !isEven(rows[entry]!, partners))
      return undefined;
    half[entry] ??= masks[entry]!.map((drawn, shaft) =>
      drawn === 1 && (partners[shaft] ?? 0) >= shaft ? 1 : 0,
    );
    return half[entry];
  };
  const outline = (entry: number, before: number) => {
    const [one, other] = [halfOf(entry), before < 0 ? empty : halfOf(before)];
    if (one !== undefined && other !== undefined) return outlineBits(one, other, wide);
    const whole = outlineBits(masks[entry]!, masks[before] ?? empty, wide);
    return partners !== undefined && one === undefined ? whole + UNEVEN : whole;
  };
  const alphabet: Alphabet = {
    size: () => known,
    form: (entry) => formOf[entry]!,
    height: (entry) => rows[entry]![0] ?? 0,
    runs: false,
    whole,
    fresh: (entry, before) => {
      const key = entry * 1_000_003 + before;
      const bits = told.get(key) ?? 1.5 + Math.min(MOST_BITS, outline(entry, before));
      told.set(key, bits);
      return bits;
    },
    mistaken: (meant, written) => {
      const one = masks[meant]!;
      const other = masks[written]!;
      const shifted =
        formOf[meant] === formOf[written] && Math.abs(rows[meant]![0]! - rows[written]![0]!) === 1;
      const apart = stretchesApart(one, other);
      return Math.min(
        // Another row of the plan was written by mistake: that is believed of rows that it has elsewhere.
        (times.get(written) ?? 0) > 1 ? kinds + 3 : Number.POSITIVE_INFINITY,
        shifted ? 4 : Number.POSITIVE_INFINITY,
        wide + 1 + (apart - 1) * (wide + 4),
      );
    },
    apart: (one, other) => unlike(masks[one]!, masks[other]),
    roughness: (of, at) =>
      edges(masks[of[at]!]!) +
      unlike(masks[of[at]!]!, masks[of[at - 1]!]) +
      unlike(masks[of[at]!]!, masks[of[at + 1]!]),
    next: () => undefined,
  };
  return {
    line,
    alphabet,
    shaftsOf: (entry) => rows[entry]!,
    more: (current) =>
      partners === undefined
        ? []
        : evened(
            current.map((entry) => rows[entry]!),
            partners,
          ).map(({ row, lift }): LineEdit => ({ edit: "change", at: row, to: entryOf(lift) })),
  };
}

/** How many squares of a row are unlike the one before them. */
function edges(row: Uint8Array): number {
  let count = 0;
  for (let i = 1; i < row.length; i++) if (row[i] !== row[i - 1]) count++;
  return count;
}

/** How many squares of two rows are unlike; none beside the edge of the cloth. */
function unlike(one: Uint8Array, other: Uint8Array | undefined): number {
  if (other === undefined) return 0;
  let count = 0;
  for (let i = 1; i < one.length; i++) if (one[i] !== other[i]) count++;
  return count;
}

/** How many stretches of neighbouring shafts two rows draw unlike. */
function stretchesApart(one: Uint8Array, other: Uint8Array): number {
  let stretches = 0;
  for (let i = 1; i < one.length; i++) {
    if (one[i] !== other[i] && !(one[i - 1] !== other[i - 1])) stretches++;
  }
  return stretches;
}

/** Bits that tell a row beside another: what grew or shrank at an edge takes few, what stands alone its place too. */
function outlineBits(row: Uint8Array, before: Uint8Array, wide: number): number {
  let bits = 0;
  const n = row.length;
  for (let from = 1; from < n; from++) {
    if (row[from] === before[from]) continue;
    let to = from;
    while (to + 1 < n && row[to + 1] !== before[to + 1] && row[to + 1] === row[from]) to++;
    // At an edge of the row before: one of the neighbours was, as the row is here.
    const atEdge = before[from - 1] === row[from] || before[to + 1] === row[from];
    const size = to + 1 - from;
    bits += atEdge ? 2 + Math.min(size, 2 + Math.log2(size + 1)) : wide + 2 + Math.log2(size);
    from = to;
  }
  return bits;
}
