import type { ShaftSet } from "@drawcord/ground";
import { parseRows } from "@drawcord/units";
import { nearest } from "../nearest.js";
import { printable } from "../printable.js";
import { at, entries, isList, items, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import { notation, notationWithin } from "./notation.js";
import { readPicture } from "./picture.js";

const mostRows = 1_000_000;

/**
 * The lifts of the section `lifts`, row 1 first: its rows, its picture, or its blocks in their order.
 * @throws {FileError} `bad-notation`, `unknown-block`, `too-large`
 */
export function readLifts(section: Spot): readonly ShaftSet[] {
  const order = at(section, "order");
  return order === undefined ? readRows(section) : putTogether(order, readBlocks(at(section, "blocks")!));
}

/** The rows of a section with `rows` or a `picture`. */
function readRows(section: Spot): readonly ShaftSet[] {
  const rows = at(section, "rows");
  if (rows === undefined) return readPicture(at(section, "picture")!);
  const lifts: ShaftSet[] = [];
  if (isList(rows)) for (const row of items(rows)) append(lifts, row, notation(row, readRow));
  else {
    let from = 0;
    for (const line of textOf(rows).split("\n")) {
      if (line.trim() !== "") append(lifts, rows, notationWithin(rows, line, from, readRow));
      from += line.length + 1;
    }
  }
  if (lifts.length === 0) throw wrong(rows, "bad-notation", `${wayTo(rows.path)} holds no rows`);
  return lifts;
}

function readRow(text: string): readonly ShaftSet[] {
  return parseRows(text, { mostRows });
}

/** Adds rows to a lift plan, as long as it does not grow out of bounds. */
function append(lifts: ShaftSet[], from: Spot, rows: readonly ShaftSet[]): void {
  if (lifts.length + rows.length > mostRows) {
    throw wrong(from, "too-large", `with ${wayTo(from.path)} the lifts come to more than ${mostRows} rows`);
  }
  for (const row of rows) lifts.push(row);
}

function readBlocks(blocks: Spot): ReadonlyMap<string, readonly ShaftSet[]> {
  return new Map(entries(blocks).map(([name, block]) => [name, readRows(block)]));
}

function putTogether(order: Spot, blocks: ReadonlyMap<string, readonly ShaftSet[]>): readonly ShaftSet[] {
  const lifts: ShaftSet[] = [];
  for (const part of items(order)) {
    const { name, times } = readPart(part);
    const block = blocks.get(name);
    if (block === undefined) {
      const meant = nearest(name, [...blocks.keys()]);
      const hint = meant === undefined ? `the blocks are ${[...blocks.keys()].join(", ")}` : `did you mean "${meant}"?`;
      throw wrong(part, "unknown-block", `no block is called "${printable(name)}"; ${hint}`);
    }
    for (let i = 0; i < times; i++) append(lifts, part, block);
  }
  return lifts;
}

function readPart(part: Spot): { readonly name: string; readonly times: number } {
  const match = /^\s*([^*]*[^*\s])\s*(?:\*\s*(\d+))?\s*$/.exec(textOf(part));
  const times = Number(match?.[2] ?? 1);
  if (match === null || times < 1) {
    const sentence = `${wayTo(part.path)} is "${printable(textOf(part))}"; expected the name of a block, or a name and how many times: moth*3`;
    throw wrong(part, "bad-notation", sentence);
  }
  return { name: match[1]!, times };
}
