import type { ShaftSet } from "@drawcord/ground";
import { parseRows } from "@drawcord/units";
import { nearest } from "../nearest.js";
import { printable } from "../printable.js";
import { at, entries, isList, items, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import { notation } from "./notation.js";
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
  const lifts = isList(rows)
    ? items(rows).flatMap((row) => [...notation(row, (text) => parseRows(text, { mostRows }))])
    : readLines(rows);
  if (lifts.length === 0) throw wrong(rows, "bad-notation", `${wayTo(rows.path)} holds no rows`);
  return checkRows(rows, lifts);
}

/** A text with a line a row; the columns of an error count from the beginning of the text. */
function readLines(of: Spot): readonly ShaftSet[] {
  const text = textOf(of);
  const lifts: ShaftSet[] = [];
  for (const line of text.matchAll(/[^\n]*\S[^\n]*/g)) {
    const upTo = " ".repeat(line.index);
    for (const row of notation(of, () => parseRows(upTo + line[0], { mostRows }))) lifts.push(row);
  }
  return lifts;
}

function checkRows(of: Spot, lifts: readonly ShaftSet[]): readonly ShaftSet[] {
  if (lifts.length <= mostRows) return lifts;
  throw wrong(of, "too-large", `${wayTo(of.path)} comes to ${lifts.length} rows; up to ${mostRows} are read`);
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
    if (lifts.length + block.length * times > mostRows) {
      throw wrong(part, "too-large", `with ${wayTo(part.path)} the lifts come to more than ${mostRows} rows`);
    }
    for (let i = 0; i < times; i++) for (const row of block) lifts.push(row);
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
