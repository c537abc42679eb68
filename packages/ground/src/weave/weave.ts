import { type BitGrid, fromCells } from "@drawcord/grid";
import type { ShaftSet } from "../types.js";

/** A weave on shafts: which shaft each end hangs on, and which shafts each pick raises. One repeat. */
export interface Weave {
  /** How many shafts it takes. */
  readonly shafts: number;
  /** The shaft of each end of the repeat. */
  readonly threading: readonly number[];
  /** The shafts raised on each pick of the repeat, the pick woven first in front. */
  readonly raised: readonly ShaftSet[];
}

/**
 * One repeat of a weave: rows are picks, columns are ends.
 * @param weave one repeat, as shafts raised on each pick
 * @example toText(drawdownOf(weaveOf("twill 1/2"))) // "..#\n.#.\n#.."
 */
export function drawdownOf(weave: Weave): BitGrid {
  const rows = weave.raised.map((set) => new Set(set));
  return fromCells(rows.length, weave.threading.length, (pick, end) =>
    rows[pick]!.has(weave.threading[end]!),
  );
}

/** Which shafts of `shafts` are not in the set. */
export function otherShafts(shafts: number, set: ShaftSet): number[] {
  const taken = new Set(set);
  return Array.from({ length: shafts }, (_, i) => i + 1).filter((shaft) => !taken.has(shaft));
}
