import type { RecipePiece } from "@drawcord/files";
import { type LiftChange, type WovenBlock, wovenLifts } from "@drawcord/units";
import type { FollowBlock } from "./types.js";

/**
 * The blocks of a piece in weaving order, each repeat by itself; none where the recipe has no blocks.
 * @param piece a piece of a recipe
 * @param shafts how many pattern shafts there are
 */
export function blocksOf({ blocks = {}, order = [] }: RecipePiece, shafts: number): readonly FollowBlock[] {
  const rowsOf = new Map(Object.entries(blocks));
  let start = 0;
  return order.flatMap((line) => {
    const rows = wovenLifts(rowsOf, [line], shafts).length;
    const asked = timesOf(line.changes.at(-1));
    const times = rows % asked === 0 ? asked : 1;
    const each = rows / times;
    const first = start;
    start += rows;
    return Array.from({ length: times }, (_, i) => ({
      name: nameOf(line),
      start: first + i * each,
      rows: each,
      time: i + 1,
      times,
    }));
  });
}

/** How often a line is woven by its last change. */
function timesOf(change: LiftChange | undefined): number {
  return change?.change === "repeated" || change?.change === "alternating" ? change.times : 1;
}

function nameOf({ beside = [], block }: WovenBlock): string {
  return [block, ...beside.map((other) => other.block)].join(" with ");
}
