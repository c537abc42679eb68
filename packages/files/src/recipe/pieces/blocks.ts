import { changedRows, printWovenBlock } from "@drawcord/units";
import type { RecipePiece } from "../types.js";

/** Rows of a lift plan that a line of the weaving order stands for. */
export interface PieceBlock {
  /** The line without its number of repeats: the block and what is done with it. */
  readonly name: string;
  /** First and one past the last of all its rows, from 0. */
  readonly start: number;
  /** One past the last of all its rows, from 0. */
  readonly end: number;
  /** How many times running it is woven. */
  readonly times: number;
}

/**
 * The lines of a piece's weaving order with the rows that each of them weaves; none where the piece has no order.
 * @param piece a piece of a recipe that was read
 * @returns the lines in weaving order
 * @example blocksOfPiece(soundRecipe(text, "least").pieces[0]) // []
 */
export function blocksOfPiece({ order = [], blocks = {}, draft }: RecipePiece): readonly PieceBlock[] {
  let end = 0;
  const lines = order.map((line): PieceBlock => {
    const start = end;
    const all = [line, ...(line.beside ?? [])];
    end += Math.max(
      ...all.map(({ block, changes }) => changes.reduce(changedRows, blocks[block]?.length ?? 0)),
    );
    const last = line.beside === undefined ? line.changes.at(-1) : undefined;
    const times = last?.change === "repeated" ? last.times : 1;
    const name = printWovenBlock(times === 1 ? line : { ...line, changes: line.changes.slice(0, -1) });
    return { name, start, end, times };
  });
  return end === draft.lifts.length ? lines : [];
}
