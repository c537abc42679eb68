/** An HTML page as a general parser gives it. */
import { type DefaultTreeAdapterTypes, parse } from "parse5";

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

export const isElement = (node: Node): node is Element => "tagName" in node;

function* elements(node: DefaultTreeAdapterTypes.ParentNode): Iterable<Element> {
  for (const child of node.childNodes) {
    if (!isElement(child)) continue;
    yield child;
    yield* elements(child);
  }
}

export function textOf(node: DefaultTreeAdapterTypes.ParentNode): string {
  return node.childNodes
    .map((child) =>
      child.nodeName === "#text"
        ? (child as DefaultTreeAdapterTypes.TextNode).value
        : isElement(child)
          ? textOf(child)
          : "",
    )
    .join("");
}

export const attribute = (element: Element, name: string) =>
  element.attrs.find((one) => one.name === name)?.value;

export function pageOf(html: string): DefaultTreeAdapterTypes.Document {
  return parse(html);
}

export function byTag(page: DefaultTreeAdapterTypes.ParentNode, tag: string): Element[] {
  return [...elements(page)].filter(({ tagName }) => tagName === tag);
}

/** The rows of a table by its id, each as texts by the titles of their columns; none where the page has no such table. */
export function tableOf(page: DefaultTreeAdapterTypes.ParentNode, id: string): Record<string, string>[] {
  const table = byTag(page, "table").find((one) => attribute(one, "id") === id);
  if (table === undefined) return [];
  const [head, ...rows] = byTag(table, "tr").map((row) =>
    row.childNodes.filter(isElement).map((cell) => textOf(cell).trim()),
  );
  return rows.map((cells) => Object.fromEntries(cells.map((cell, i) => [head![i]!, cell])));
}
