import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { plainText } from "../../page/src/document/text.js";
import type { Block } from "../../page/src/document/types.js";
import { toPdf } from "../../page/src/print.js";

import { exampleRecipe, fullSheet } from "./recipes.js";

/** An element of the tree by which a PDF is read out, with the text inside of it. */
interface Element {
  readonly role: string;
  readonly alt: string;
  readonly text: string;
  readonly inside: readonly Element[];
}

/** What a general library gives of a tree: elements, and the ids of stretches of marked content. */
interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly id?: string;
  readonly children?: readonly Node[];
}

const dense = (text: string) => text.replaceAll(/\s/gu, "");

/** The tree of a PDF, page after page, and the text that is under no tag. */
async function read(bytes: Uint8Array): Promise<{ elements: Element[]; untagged: string[] }> {
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const elements: Element[] = [];
  const untagged: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const texts = new Map<string, string>();
    const open: (string | undefined)[] = [];
    for (const item of (await page.getTextContent({ includeMarkedContent: true })).items) {
      if ("str" in item) {
        const id = open.findLast((one) => one !== undefined);
        if (id !== undefined) texts.set(id, (texts.get(id) ?? "") + item.str);
        else if (item.str.trim() !== "") untagged.push(item.str);
      } else if (item.type === "endMarkedContent") open.pop();
      else open.push(item.id ?? (item as { readonly tag?: string }).tag);
    }
    const element = ({ role = "", alt = "", children = [] }: Node): Element => ({
      role,
      alt,
      text: children.map(({ id }) => (id === undefined ? "" : (texts.get(id) ?? ""))).join(""),
      inside: children.flatMap((child) => (child.role === undefined ? [] : [element(child)])),
    });
    const tree = (await page.getStructTree()) as Node;
    for (const child of tree.children ?? []) elements.push(...element(child).inside);
  }
  await pdf.destroy();
  return { elements, untagged };
}

describe("a PDF read out by its tags", () => {
  const sheet = fullSheet(exampleRecipe("band"));
  const blocks = sheet.parts.flatMap((part) => part.blocks);
  const each = <K extends Block["kind"]>(kind: K) =>
    blocks.filter((block): block is Extract<Block, { kind: K }> => block.kind === kind);
  const bytes = toPdf(sheet);
  const tree = bytes.then(read);
  const of = async (role: string) => (await tree).elements.filter((element) => element.role === role);

  it("tells its language, and headings of three ranks", async () => {
    const pdf = await getDocument({ data: (await bytes).slice(), verbosity: 0 }).promise;
    const { info } = (await pdf.getMetadata()) as { readonly info: { readonly Language?: string } };
    expect(info.Language).toBe("en");
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    await pdf.destroy();
    expect((await tree).elements[0]).toMatchObject({ role: "H1", text: sheet.title });
    expect((await of("H2")).map(({ text }) => text)).toEqual(sheet.parts.map(({ title }) => title));
    expect((await of("H3")).map(({ text }) => dense(text))).toEqual(
      each("working").map(({ title }) => dense(title)),
    );
  });

  it("has a text for every picture, and every formula on a line", async () => {
    const pictures = each("pictures").flatMap((block) => block.pictures);
    expect((await of("Figure")).map(({ alt }) => alt)).toEqual(pictures.map(({ alt }) => alt));
    expect((await of("Caption")).map(({ text }) => dense(text))).toEqual(
      pictures.map(({ caption }) => dense(caption)),
    );
    const formulas = (await of("Formula")).map(({ alt }) => alt);
    expect(formulas.length).toBe(2 * each("working").length);
    expect(formulas).toContain("W = n / S");
  });

  it("gives every table row by row, its head once", async () => {
    const rows = (await of("Table")).flatMap(({ inside }) => inside.filter(({ role }) => role === "TR"));
    const wanted = each("table").flatMap((table) => [
      table.columns.map(({ title }) => `TH ${dense(title)}`),
      ...table.rows.flatMap((row, at) => [
        ...(table.heads ?? []).flatMap(({ row: before, text }) =>
          before === at ? [[`TH ${dense(plainText(text))}`]] : [],
        ),
        row.map((text, i) => {
          const { kind } = table.columns[i]!;
          const names = kind === "head" || kind === "boxes";
          return `${names ? "TH" : "TD"} ${kind === "tick" ? "" : dense(plainText(text))}`;
        }),
      ]),
    ]);
    expect(
      rows.map(({ inside }) => inside.map(({ role, text, alt }) => `${role} ${dense(text)}${alt}`)),
    ).toEqual(wanted);
  });

  it("holds every paragraph, and leaves out page numbers and running heads", async () => {
    const paragraphs = (await of("P")).map(({ text }) => dense(text));
    for (const { text } of each("paragraph")) expect(paragraphs).toContain(dense(plainText(text)));
    expect((await tree).untagged).toEqual([]);
    const told = (await tree).elements.map(({ text }) => text);
    expect(told.filter((text) => text === sheet.title).length).toBe(1);
  });
});
