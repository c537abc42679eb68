import { type Block, plainText, type Text } from "@drawcord/page";
import { termsIn } from "../glossary/terms-in.js";
import type { SheetPart } from "../part-names.js";

/** The terms that the other parts of a sheet use, each with what it means. */
export function glossaryPart(parts: readonly SheetPart[]): SheetPart {
  const text = parts.flatMap(({ blocks, title }) => [title, ...blocks.flatMap(textsOf)]).join("\n");
  return {
    name: "glossary",
    title: "Glossary",
    blocks: [
      {
        kind: "table",
        id: "glossary",
        caption: "The terms of this sheet",
        columns: [{ title: "Term", kind: "head" }, { title: "What it means" }],
        rows: termsIn(text).map(({ meaning, term }) => [term, meaning]),
      },
    ],
  };
}

function textsOf(block: Block): readonly string[] {
  const plain = (texts: readonly Text[]) => texts.map(plainText);
  switch (block.kind) {
    case "paragraph":
      return plain([block.text]);
    case "table":
      return [block.caption, ...block.columns.map(({ title }) => title), ...plain(block.rows.flat())];
    case "pictures":
      return block.pictures.flatMap(({ alt, caption }) => [alt, caption]);
    case "working":
      return [block.title, ...plain(block.symbols)];
  }
}
