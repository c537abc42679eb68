import type { Block } from "@drawcord/page";

/** A block whose names end with a word, so that tasks of one kind may stand on one page, but no two pictures of one name. */
export function renamed(block: Block, word: string): Block {
  if (block.kind === "table") return { ...block, id: `${block.id}-${word}` };
  if (block.kind !== "pictures") return block;
  return {
    ...block,
    pictures: block.pictures.map((picture) => ({ ...picture, id: `${picture.id}-${word}` })),
  };
}
