/** What a reader finds on a printed sheet, whatever it is printed as: texts and tables, in the order in which they are read. */
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { attribute, byTag, isElement, pageOf, textOf } from "./read-back.js";

export interface PrintedTable {
  readonly kind: "table";
  readonly caption: string;
  readonly head: readonly string[];
  /** In the order in which they are to be read, which is upwards where the caption says so; a heading within is a single text. */
  readonly rows: readonly (readonly string[])[];
}

export type Printed = PrintedTable | { readonly kind: "text"; readonly text: string };

const tidy = (text: string) => text.replaceAll(/\s+/g, " ").trim();

function readUpwards(table: PrintedTable): PrintedTable {
  return table.caption.includes("read upwards") ? { ...table, rows: table.rows.toReversed() } : table;
}

/** An HTML page. */
export function printedHtml(html: string): Printed[] {
  const main = byTag(pageOf(html), "main")[0]!;
  return [...byTags(main, ["p", "h2", "h3", "table"])].map((element): Printed => {
    if (element.tagName !== "table") return { kind: "text", text: tidy(textOf(element)) };
    const [head, ...rows] = byTag(element, "tr").map((row) =>
      row.childNodes.filter(isElement).map((cell) => tidy(textOf(cell))),
    );
    const body = rows.filter(([first]) => !first!.endsWith("begin here"));
    const caption = textOf(byTag(element, "caption")[0]!);
    return readUpwards({ kind: "table", caption, head: head!, rows: body });
  });
}

function byTags(node: Parameters<typeof byTag>[0], tags: readonly string[]) {
  const found: ReturnType<typeof byTag> = [];
  const visit = (parent: Parameters<typeof byTag>[0]) => {
    for (const child of parent.childNodes) {
      if (!isElement(child) || attribute(child, "hidden") !== undefined) continue;
      if (tags.includes(child.tagName)) found.push(child);
      else visit(child);
    }
  };
  visit(node);
  return found;
}

/** A page of Markdown. */
export function printedMarkdown(markdown: string): Printed[] {
  const plain = (text: string) =>
    tidy(
      text
        .replaceAll("**", "")
        .replaceAll(/\\(?=[^\w\s])/g, "")
        .replaceAll("☐", ""),
    );
  const blocks = markdown.split("\n\n");
  return blocks.flatMap((block, i): Printed[] => {
    if (!block.startsWith("| "))
      return blocks[i + 1]?.startsWith("| ") ? [] : [{ kind: "text", text: plain(block) }];
    const [head, , ...rows] = block
      .trim()
      .split("\n")
      .map((line) =>
        line
          .slice(2, -2)
          .split(/(?<!\\)\|/)
          .map(plain),
      );
    return [readUpwards({ kind: "table", caption: plain(blocks[i - 1]!), head: head!, rows })];
  });
}

/** What a general library gives of the tree by which a PDF is read out. */
interface Node {
  readonly role?: string;
  readonly id?: string;
  readonly children?: readonly Node[];
}

/** The pages of a PDF, read out by its tags. */
export async function printedPdf(bytes: Uint8Array): Promise<Printed[]> {
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const printed: Printed[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const texts = await textsOf(page);
    const text = (node: Node): string =>
      (node.children ?? [])
        .map((child) => (child.id === undefined ? text(child) : (texts.get(child.id) ?? "")))
        .join(" ");
    const read = (node: Node) => {
      for (const child of node.children ?? []) {
        const { role, children = [] } = child;
        if (role === "Table") {
          const rows = children
            .filter((row) => row.role === "TR")
            .map((row) => (row.children ?? []).map((cell) => tidy(text(cell))));
          const caption = children.find((one) => one.role === "Caption");
          const last = printed.at(-1);
          // A table that has no caption goes on from the page before.
          if (caption === undefined && last?.kind === "table") {
            printed[printed.length - 1] = { ...last, rows: [...last.rows, ...rows] };
          } else {
            printed.push({
              kind: "table",
              caption: tidy(text(caption!)),
              head: rows[0]!,
              rows: rows.slice(1),
            });
          }
        } else if (role === "P" || role === "H2" || role === "H3") {
          printed.push({ kind: "text", text: tidy(text(child)) });
        } else read(child);
      }
    };
    read((await page.getStructTree()) as Node);
  }
  await pdf.destroy();
  return printed;
}

/** The text of each stretch of marked content, by its id. */
async function textsOf(page: { getTextContent: (how: { includeMarkedContent: true }) => Promise<unknown> }) {
  const texts = new Map<string, string>();
  const open: (string | undefined)[] = [];
  const { items } = (await page.getTextContent({ includeMarkedContent: true })) as {
    readonly items: readonly {
      readonly str?: string;
      readonly hasEOL?: boolean;
      readonly type?: string;
      readonly id?: string;
    }[];
  };
  for (const { str, hasEOL, type, id } of items) {
    if (str !== undefined) {
      const at = open.findLast((one) => one !== undefined);
      if (at !== undefined) texts.set(at, `${texts.get(at) ?? ""}${str}${hasEOL ? " " : ""}`);
    } else if (type === "endMarkedContent") open.pop();
    else open.push(id);
  }
  return texts;
}
