/**
 * A weaver who has nothing but the printed page: reads threading, lifts, ground and treadling out of the tables of an HTML
 * sheet and makes a draft of them. She knows none of the package's own types or functions.
 */
import { type DefaultTreeAdapterTypes, parse } from "parse5";
import { expect } from "vitest";

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

const isElement = (node: Node): node is Element => "tagName" in node;

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

const attribute = (element: Element, name: string) => element.attrs.find((one) => one.name === name)?.value;

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

/** `1 3-5` as numbers; `none` as no numbers. */
function numbers(text: string): number[] {
  if (text === "none" || text === "") return [];
  return text.split(/\s+/).flatMap((part) => run(part));
}

/** `8-5` as 8 7 6 5. */
function run(text: string): number[] {
  const [from, to] = text.split(/[-–]/).map(Number) as [number, number?];
  if (to === undefined) return [from];
  const step = from <= to ? 1 : -1;
  return Array.from({ length: Math.abs(to - from) + 1 }, (_, i) => from + i * step);
}

/** The draft as the page tells it. */
export function draftOnPage(html: string) {
  const page = pageOf(html);
  const units = new Map<number, { shafts: number[]; ends: number }>();
  for (const group of tableOf(page, "unit-threading-list")) {
    const shafts = group["Pattern shafts in order"]!.split(" ");
    const ends = group["Ends a unit"]!.split(" ").map(Number);
    for (const [i, unit] of run(group["Units"]!).entries()) {
      const on = shafts[i] === "X" ? [] : shafts[i]!.split("+").map(Number);
      units.set(unit, { shafts: on, ends: ends[i] ?? ends[0]! });
    }
  }
  const inOrder = [...units.entries()].sort(([a], [b]) => a - b).map(([, unit]) => unit);

  const listed = new Map<number, { readonly lift: number[]; readonly picks: number }>();
  for (const entry of tableOf(page, "lift-list")) {
    const rows = run(entry["Row"]!);
    const picks = Number(entry["Picks"]!.replaceAll("\u00a0", "")) / rows.length;
    for (const row of rows) listed.set(row, { lift: numbers(entry["Pull handles"]!), picks });
  }
  const order = tableOf(page, "lift-order").map((entry) => ({
    rows: run(entry["Rows"]!),
    as: run(/^[\d–]+/.exec(entry["Woven as rows"]!)![0]),
  }));
  const plain = [...listed.keys()];
  const woven = (order.length === 0 ? [{ rows: plain, as: plain }] : order).flatMap(({ rows, as }) =>
    rows.map((row, i) => ({ row, ...listed.get(as[i]!)! })),
  );
  expect(woven.map(({ row }) => row)).toEqual(woven.map((_, i) => i + 1));
  const lifts = woven.map(({ lift }) => lift);
  const picksPerRow = woven.map(({ picks }) => picks);

  const threads = tableOf(page, "ground-threading");
  const fromRight = threads.some((row) => row["Where"]!.startsWith("From the last end"));
  const at = (where: RegExp) => {
    const shafts = numbers(
      threads.find((row) => where.test(row["Where"]!))?.["Ground shafts in order"] ?? "",
    );
    return fromRight ? shafts.reverse() : shafts;
  };
  const round = at(/^From the (first|last) end of unit/);
  const inside = inOrder.reduce((sum, { ends }) => sum + ends, 0);
  const lead = fromRight ? inside % round.length : 0;
  // Read from the right, the round ends with the last end: so it begins somewhere in the round at the first.
  const threading = round.map((_, i) => round[(i - lead + round.length) % round.length]!);
  const treadles = tableOf(page, "tie-up").map((row) => ({
    raise: numbers(row["Raises shafts"]!),
    sink: numbers(row["Sinks shafts"]!),
  }));
  const steps = tableOf(page, "treadling")[0]!
    ["Treadles in order"]!.split(" ")
    .map((treadle) => (treadle === "rest" ? { raise: [], sink: [] } : treadles[Number(treadle) - 1]!));
  const shafts = Number(/on (\d+) ground shafts?/.exec(textOf(page))![1]);
  return {
    ground: { shafts, threading, steps },
    unitEnds: inOrder.map(({ ends }) => ends),
    threading: inOrder.map((unit) => unit.shafts),
    lifts,
    picksPerRow,
    selvedge: { left: at(/^Left selvedge/), right: at(/^Right selvedge/) },
  };
}
