import type { ShaftSet } from "@drawcord/ground";

/** Whether both name the same shafts. */
export function sameShafts(a: ShaftSet, b: ShaftSet): boolean {
  return a === b || (a.length === b.length && a.every((shaft, i) => shaft === b[i]));
}

/** A list of sets with each set told apart once: entry `i` is `distinct[indexOf[i]]`. */
export interface DistinctSets {
  readonly distinct: readonly ShaftSet[];
  readonly indexOf: Int32Array;
}

/**
 * Tells apart the sets of a list, numbered as they first come. Sets are hashed, not printed: a single-unit draw names
 * a thousand shafts a row.
 */
export function distinctSets(sets: readonly ShaftSet[]): DistinctSets {
  const distinct: ShaftSet[] = [];
  const byHash = new Map<number, number[]>();
  const indexOf = Int32Array.from(sets, (set) => {
    let hash = set.length;
    for (let i = 0; i < set.length; i++) hash = Math.imul(hash ^ set[i]!, 0x01000193);
    const alike = byHash.get(hash) ?? [];
    if (alike.length === 0) byHash.set(hash, alike);
    let index = alike.find((candidate) => sameShafts(distinct[candidate]!, set));
    if (index === undefined) {
      index = distinct.push(set) - 1;
      alike.push(index);
    }
    return index;
  });
  return { distinct, indexOf };
}

/** The shafts of either set, ascending. */
export function unite(a: ShaftSet, b: ShaftSet): ShaftSet {
  return [...new Set([...a, ...b])].sort((one, other) => one - other);
}
