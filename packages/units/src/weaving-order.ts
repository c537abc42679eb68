import type { ShaftSet } from "@drawcord/ground";
import { blocksTogether } from "./blocks-together.js";
import { UnitsError } from "./error.js";
import { changedLifts } from "./lift-change.js";
import { checkRows } from "./lift-variation.js";
import type { ChangedBlock, WovenBlock } from "./woven-block.js";

/**
 * Puts blocks together in weaving order.
 * @param blocks the rows of each block by its name
 * @param order what is woven, first to last
 * @param shafts how many pattern shafts there are, for changes that name none
 * @throws {UnitsError} `unknown-block` with the `entry` (from 1); as the changes and `blocksTogether` do; `too-large` past a
 * million rows
 * @example wovenLifts(new Map([["a", [[1], [2]]]]), [parseWovenBlock("a *2 every-other upside-down")], 2) // [[1], [2], [2], [1]]
 */
export function wovenLifts(
  blocks: ReadonlyMap<string, readonly ShaftSet[]>,
  order: readonly WovenBlock[],
  shafts: number,
): readonly ShaftSet[] {
  const lifts: ShaftSet[] = [];
  order.forEach((line, i) => {
    const parts = [line, ...(line.beside ?? [])].map((part) => ({
      name: part.block,
      lifts: changedBlock(part, rowsOf(part.block, i), shafts, (block) => rowsOf(block, i)),
    }));
    const woven = parts.length === 1 ? parts[0]!.lifts : blocksTogether(parts, line.cutShort);
    checkRows(lifts.length + woven.length);
    for (const row of woven) lifts.push(row);
  });
  return lifts;

  function rowsOf(block: string, entry: number): readonly ShaftSet[] {
    const rows = blocks.get(block);
    if (rows !== undefined) return rows;
    const known = [...blocks.keys()].join(", ");
    const sentence = `the block "${block}" is not there; the blocks are: ${known}`;
    throw new UnitsError("unknown-block", sentence, { entry: entry + 1, block });
  }
}

/** The rows of a block with its changes made, first to last. */
function changedBlock(
  { changes }: ChangedBlock,
  rows: readonly ShaftSet[],
  shafts: number,
  rowsOf: (block: string) => readonly ShaftSet[],
): readonly ShaftSet[] {
  return changes.reduce((changed, change) => changedLifts(changed, change, shafts, rowsOf), rows);
}
