import { boundOf } from "./document/bound.js";
import { leavesOf } from "./document/leaves.js";
import { boxesOf, plainText, wordsOf } from "./document/text.js";
import type { Block, Bound, Column, Document, Picture, Table, Text } from "./document/types.js";
import { showable } from "./drawing/escape.js";
import { formulaText } from "./formula/text.js";
import { boxedWords, NO_BOX } from "./layout/table-columns.js";

/** Where the pictures of a page of Markdown lie. */
export interface MarkdownOptions {
  /**
   * The file of a picture, beside the page; default its id with the ending `.svg`.
   * @param picture the picture, by its id or caption
   */
  readonly fileOf?: (picture: Picture) => string;
}

/**
 * A document as Markdown (CommonMark, with the tables of GitHub); its pictures are files beside it. Several are parted by rules.
 * @param document the document, or several bound in one
 * @param options where its pictures lie
 * @example toMarkdown(document).startsWith("# ") // true
 */
export function toMarkdown(document: Document | Bound, options: MarkdownOptions = {}): string {
  return boundOf(document)
    .map((one) => oneMarkdown(one, options))
    .join("\n---\n\n");
}

function oneMarkdown(document: Document, options: MarkdownOptions): string {
  const { fileOf = ({ id }: Picture) => `${id}.svg` } = options;
  const parts = document.parts.flatMap(({ title, blocks }) => [
    `## ${escaped(title)}`,
    ...blocks.flatMap((block) => written(block, fileOf)),
  ]);
  return `${[`# ${escaped(document.title)}`, escaped(document.subtitle), ...parts].join("\n\n")}\n`;
}

function written(block: Block, fileOf: (picture: Picture) => string): string[] {
  switch (block.kind) {
    case "paragraph":
      if (block.tone === "heading") return [`### ${escaped(plainText(block.text))}`];
      return [block.tone === "caution" ? `> ${inline(block.text)}` : inline(block.text)];
    case "table":
      return table(block);
    case "pictures":
      return block.pictures.flatMap((picture) => [
        `![${escaped(picture.alt)}](<${encodeURI(fileOf(picture))}>)`,
        ...(picture.caption === "" ? [] : [`*${escaped(picture.caption)}*`]),
      ]);
    case "working":
      return [
        `### ${escaped(block.title)}`,
        escaped(formulaText(block.formula)),
        escaped(formulaText(block.substitution)),
        `**${escaped(block.result)}**`,
        block.symbols.map((symbol) => `- ${inline(symbol)}`).join("\n"),
        `Source: ${escaped(block.source)}`,
      ];
  }
}

function inline(text: Text): string {
  return wordsOf(text)
    .map((words, i) => {
      const body = escaped(words.text, i === 0);
      if (words.low) return `<sub>${body}</sub>`;
      return words.strong ? strong(body) : body;
    })
    .join("");
}

/** Blanks stand outside the marks, for within them the marks are read as asterisks. */
function strong(text: string): string {
  return text.replace(/^(\s*)(.*?)(\s*)$/s, (whole, before: string, word: string, after: string) =>
    word === "" ? whole : `${before}**${word}**${after}`,
  );
}

function table(from: Table): string[] {
  const { caption, columns, rows, rising = false, heads = [] } = from;
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  const head = line(columns.map(({ title }) => escaped(title)));
  const rule = line(columns.map(({ kind }) => (kind === "number" ? "---:" : "---")));
  return leavesOf(from).flatMap((leaf, i, { length }) => {
    const body: string[] = [];
    for (let row = leaf.start; row < leaf.end; row++) {
      const heading = heads.find((one) => one.row === row);
      if (heading !== undefined) {
        const first = `**${escaped(plainText(heading.text))}**`;
        body.push(line([first, ...columns.slice(1).map(() => "")]));
      }
      body.push(line(rows[row]!.map((text, column) => cell(text, columns[column]!.kind))));
    }
    if (rising) body.reverse();
    const name = length === 1 ? caption : `${caption} Leaf ${i + 1} of ${length}.`;
    return [`*${escaped(name)}*`, [head, rule, ...body].join("\n")];
  });
}

function cell(text: Text, kind: Column["kind"]): string {
  if (kind === "tick") return "☐".repeat(boxesOf(text));
  if (kind === "boxes")
    return boxedWords(text)
      .map((word) => (word === NO_BOX ? word : `☐ ${escaped(word)}`))
      .join(" ");
  return kind === "head" ? `**${escaped(plainText(text))}**` : inline(text);
}

/** Text in which nothing is markup, at the start of a line or within it; a line end becomes a blank. */
function escaped(text: string, opens = true): string {
  return showable(text)
    .replace(/\s*\n\s*/g, " ")
    .replace(/[\\`*_{}[\]<>()#+\-.!|~&$^=]/g, (mark, at: number) =>
      /[+\-.#=()]/.test(mark) && !(opens && startsLine(text, at)) ? mark : `\\${mark}`,
    );
}

/** Some marks are markup only where a line begins with them. */
function startsLine(text: string, at: number): boolean {
  return /^\s*\d*$/.test(text.slice(0, at));
}
