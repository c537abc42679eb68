import type { ShaftSet } from "@drawcord/ground";
import { UnitsError } from "./error.js";
import { changedLifts } from "./lift-change.js";
import { checkRows } from "./lift-variation.js";
import type { WovenBlock } from "./woven-block.js";

/**
 * Puts blocks together in weaving order.
 * @param blocks the rows of each block by its name
 * @param order what is woven, first to last
 * @param shafts how many pattern shafts there are, for changes that name none
 * @throws {UnitsError} `unknown-block` with the `entry` (from 1); as the changes do; `too-large` past a million rows
 * @example wovenLifts(new Map([["a", [[1], [2]]]]), [parseWovenBlock("a *2 every-other upside-down")], 2) // [[1], [2], [2], [1]]
 */
export function wovenLifts(
  blocks: ReadonlyMap<string, readonly ShaftSet[]>,
  order: readonly WovenBlock[],
  shafts: number,
): readonly ShaftSet[] {
  const lifts: ShaftSet[] = [];
  order.forEach(({ block, changes }, i) => {
    const rows = blocks.get(block);
    if (rows === undefined) {
      const known = [...blocks.keys()].join(", ");
      throw new UnitsError("unknown-block", `the block "${block}" is not there; the blocks are: ${known}`, {
        entry: i + 1,
        block,
      });
    }
    const woven = changes.reduce((changed, change) => changedLifts(changed, change, shafts), rows);
    checkRows(lifts.length + woven.length);
    for (const row of woven) lifts.push(row);
  });
  return lifts;
}
