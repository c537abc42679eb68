import type { Block, Bound, Document } from "@drawcord/page";

/** The documents of a class without what is there to be written on, for a wall shows them and nobody writes there. */
export function forSlides([first, ...rest]: Bound): Bound {
  return [shown(first), ...rest.map(shown)];
}

function shown(document: Document): Document {
  const parts = document.parts
    .filter(({ name }) => !name.endsWith("-name"))
    .map((part) => ({ ...part, blocks: part.blocks.filter(isShown) }));
  return { ...document, parts };
}

/** Frames and lines to write on are no thing to show. */
function isShown(block: Block): boolean {
  return block.kind !== "pictures" || !block.pictures.every(({ id }) => /^(lines|room)-/.test(id));
}
