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

/** The rows of the lift card in weaving order, whatever leaves it is on: headings and lines. */
function cardRowsOn(page: DefaultTreeAdapterTypes.Document): string[][] {
  const leaves = byTag(page, "table").filter((table) => /^lift-card/.test(attribute(table, "id") ?? ""));
  return leaves.flatMap((leaf) => {
    const body = byTag(leaf, "tbody").flatMap((rows) => byTag(rows, "tr"));
    return body.map((row) => row.childNodes.filter(isElement).map((cell) => textOf(cell).trim())).reverse();
  });
}

/** `1 2 1 3 ×2` as the treadles of eight picks; `–` is none. */
function treadlesIn(text: string): number[] {
  const [, once, times] = /^(.*?)(?: ×(\d+))?$/.exec(text)!;
  const treadles = once!.split(" ").map((word) => (word === "–" ? 0 : Number(word)));
  return Array.from({ length: Number(times ?? 1) }, () => treadles).flat();
}

/** Handles as a card prints them; bars between tens, a dash or a word for none. */
function handlesIn(text: string): number[] {
  const words = text.split(/\s+/).filter((word) => !/^[|–]$/.test(word) && word !== "none");
  return words.flatMap(run);
}

interface WovenRow {
  readonly lift: number[];
  readonly treadles: number[];
}

/** The lifts and treadles of every row, by its number. Draw and let go must lead to what is then drawn. */
function rowsOnCard(page: DefaultTreeAdapterTypes.Document): WovenRow[] {
  const rows = new Map<number, WovenRow & { draw: number[]; go: number[] }>();
  const every = /Every row: treadles ([\d– ×]+),/.exec(textOf(page));
  let each = every === null ? [] : treadlesIn(every[1]!);
  for (const cells of cardRowsOn(page)) {
    if (cells.length === 1) {
      const told = /treadles ([\d– ×]+),/.exec(cells[0]!);
      if (told !== null) each = treadlesIn(told[1]!);
      continue;
    }
    const [numbers, draw, go, drawn, treadles] = cells as [string, string, string, string, string?];
    const which = numbers
      .split(/\s+/)
      .filter((word) => word !== "·")
      .map(Number);
    for (const [i, row] of which.entries()) {
      expect(rows.has(row), `row ${row} stands once`).toBe(false);
      rows.set(row, {
        lift: handlesIn(drawn),
        treadles: treadles === undefined ? each : treadlesIn(treadles),
        // Rows on one line are woven at other times, or they follow one another and change nothing.
        draw: i > 0 && which[i - 1] === row - 1 ? [] : handlesIn(draw),
        go: i > 0 && which[i - 1] === row - 1 ? [] : handlesIn(go),
      });
    }
  }
  const ordered = Array.from({ length: rows.size }, (_, i) => rows.get(i + 1)!);
  const held = new Set<number>();
  for (const { lift, draw, go } of ordered) {
    for (const handle of go) expect(held.delete(handle)).toBe(true);
    for (const handle of draw) held.add(handle);
    expect([...held].sort((a, b) => a - b)).toEqual(lift);
  }
  return ordered;
}

/** The draft as the page tells it: the lift card, the list of threading and the tie-up alone. */
export function draftOnPage(html: string) {
  const page = pageOf(html);
  const list = tableOf(page, "threading-list");
  const caption = textOf(
    byTag(byTag(page, "table").find((t) => attribute(t, "id") === "threading-list")!, "caption")[0]!,
  );
  const fromRight = caption.includes("from right to left");
  const ends: { shaft: number; unit: number }[] = [];
  const units = new Map<number, { shafts: number[]; ends: number }>();
  for (const line of list) {
    const before = ends.length;
    const patterns = line["Pattern"] ?? line["Cord"]!;
    const edge = /selvedge/.test(line["Unit"]!);
    const named = edge ? [0] : run(line["Unit"]!);
    const each = line["Ground"]!.endsWith(" in each")
      ? named.map(() => line["Ground"]!.slice(0, -" in each".length))
      : line["Ground"]!.split(" / ");
    for (const [i, unit] of named.entries()) {
      const grounds = each[i]!.split(" ").map(Number);
      ends.push(...grounds.map((shaft) => ({ shaft, unit })));
      if (edge) continue;
      const on = patterns.split(" ")[i]!;
      units.set(unit, { shafts: on === "X" ? [] : on.split("+").map(Number), ends: grounds.length });
    }
    expect(ends.length).toBe(Number(line["Ends so far"]!.replaceAll("\u00a0", "")));
    expect(ends.length).toBeGreaterThan(before);
  }
  if (fromRight) ends.reverse();
  const inOrder = [...units.entries()].sort(([a], [b]) => a - b).map(([, unit]) => unit);
  const inside = ends.filter(({ unit }) => unit > 0).map(({ shaft }) => shaft);
  const first = ends.findIndex(({ unit }) => unit > 0);
  const edges = ends.map(({ shaft }) => shaft);

  const treadles = new Map(
    tableOf(page, "tie-up").map((row) => [
      Number(row["Treadle"]),
      { raise: numbers(row["Raises shafts"]!), sink: numbers(row["Sinks shafts"]!) },
    ]),
  );
  const rows = rowsOnCard(page);
  const steps = rows
    .flatMap((row) => row.treadles)
    .map((treadle) => treadles.get(treadle) ?? { raise: [], sink: [] });
  const shafts = Number(/on (\d+) ground shafts?/.exec(textOf(page))![1]);
  return {
    ground: { shafts, threading: inside, steps },
    unitEnds: inOrder.map((unit) => unit.ends),
    threading: inOrder.map((unit) => unit.shafts),
    lifts: rows.map(({ lift }) => lift),
    picksPerRow: rows.map((row) => row.treadles.length),
    selvedge: { left: edges.slice(0, first), right: edges.slice(first + inside.length) },
  };
}
