import type { ShaftDraft } from "@drawcord/check";
import type { ShaftSet } from "@drawcord/ground";

/** A threading with each end on one shaft. */
export interface SingleShafts {
  readonly threading: readonly number[];
  /** How many shafts there are then. */
  readonly shafts: number;
  /** Shafts that stand for several of the draft, or for none. */
  readonly several: ReadonlyMap<number, ShaftSet>;
}

/**
 * The threading of a draft with each end on one shaft: ends that hang on several, or on none, get shafts of their own after
 * those of the draft, one for each such set.
 */
export function singleShafts({ shafts, threading }: ShaftDraft): SingleShafts {
  const several = new Map<number, ShaftSet>();
  const known = new Map<string, number>();
  const single = threading.map((on) => {
    if (on.length === 1) return on[0]!;
    const key = on.join(" ");
    const shaft = known.get(key) ?? shafts + known.size + 1;
    known.set(key, shaft);
    several.set(shaft, on);
    return shaft;
  });
  return { threading: single, shafts: shafts + known.size, several };
}
