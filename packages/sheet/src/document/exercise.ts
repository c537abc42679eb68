import { BLANK, wordsOf } from "./text.js";
import type { Block, Picture, Sheet, Text } from "./types.js";

/**
 * A sheet for a class: every answer left blank, pictures emptied where they are answers. The sheet itself is the key.
 * @example exercise({ title: "Runner", subtitle: "", parts: [] }).title // "Runner: exercise"
 */
export function exercise(sheet: Sheet): Sheet {
  return {
    ...sheet,
    title: `${sheet.title}: exercise`,
    parts: sheet.parts.map((part) => ({ ...part, blocks: part.blocks.map(blankBlock) })),
  };
}

/**
 * The sheet that holds the answers of `exercise`, under the title that says so.
 * @example key({ title: "Runner", subtitle: "", parts: [] }).title // "Runner: key"
 */
export function key(sheet: Sheet): Sheet {
  return { ...sheet, title: `${sheet.title}: key` };
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
