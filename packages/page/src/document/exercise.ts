import { BLANK, wordsOf } from "./text.js";
import type { Block, Document, Picture, Text } from "./types.js";

/**
 * A document for a class: every answer left blank, pictures emptied where they are answers. The document itself is the key.
 * @example exercise({ title: "Runner", subtitle: "", parts: [] }).title // "Runner: exercise"
 */
export function exercise<Kind extends Document>(document: Kind): Kind {
  return {
    ...document,
    title: `${document.title}: exercise`,
    parts: document.parts.map((part) => ({ ...part, blocks: part.blocks.map(blankBlock) })),
  };
}

/**
 * The document that holds the answers of `exercise`, under the title that says so.
 * @example key({ title: "Runner", subtitle: "", parts: [] }).title // "Runner: key"
 */
export function key<Kind extends Document>(document: Kind): Kind {
  return { ...document, title: `${document.title}: key` };
}

function blankBlock(block: Block): Block {
  switch (block.kind) {
    case "paragraph":
      return { ...block, text: blankText(block.text) };
    case "table":
      return { ...block, rows: block.rows.map((row) => row.map(blankText)) };
    case "pictures":
      return { ...block, pictures: block.pictures.map(blankPicture) };
    case "working":
      return { ...block, symbols: block.symbols.map(blankText), blank: true };
  }
}

function blankText(text: Text): Text {
  if (typeof text === "string") return text;
  return wordsOf(text).map((words) => (words.answer ? { text: BLANK } : words));
}

function blankPicture({ blank, ...picture }: Picture): Picture {
  return blank === undefined
    ? picture
    : {
        ...picture,
        drawing: blank,
        caption: `${picture.caption}. For you to draw`,
        alt: `Empty, for you to draw: ${picture.caption}.`,
      };
}
