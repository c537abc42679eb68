import { blocksOfPiece, type RecipePiece } from "@drawcord/files";
import type { FollowBlock } from "./types.js";

/**
 * The blocks of a piece in weaving order, each repeat by itself and under the name that the lift card gives it; none where the
 * recipe has no blocks.
 * @param piece a piece of a recipe
 */
export function followBlocks(piece: RecipePiece): readonly FollowBlock[] {
  return blocksOfPiece(piece).flatMap(({ name, start, end, times }) => {
    const rows = (end - start) / times;
    return Array.from({ length: times }, (_, i) => ({
      name,
      start: start + i * rows,
      rows,
      time: i + 1,
      times,
    }));
  });
}
