import type { ShaftSet } from "@drawcord/ground";

/** Whether both name the same shafts. */
export function sameShafts(a: ShaftSet, b: ShaftSet): boolean {
  return a === b || (a.length === b.length && a.every((shaft, i) => shaft === b[i]));
}

/** The shafts of either set, ascending. */
export function unite(a: ShaftSet, b: ShaftSet): ShaftSet {
  return [...new Set([...a, ...b])].sort((one, other) => one - other);
}
