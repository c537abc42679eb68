import type { ShaftSet } from "@drawcord/ground";
import { parseLifts, UnitsError } from "@drawcord/units";
import { nearest } from "../nearest.js";
import { printable } from "../printable.js";
import { at, entries, isList, items, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import { notationError } from "./notation.js";
import { readPicture } from "./picture.js";

const mostRows = 1_000_000;
/** The most shafts named in all rows together, runs counted out. */
const mostShafts = 20_000_000;

/**
 * The lifts of the section `lifts`, row 1 first: its rows, its picture, or its blocks in their order.
 * @throws {FileError} `bad-notation`, `unknown-block`, `too-large`
 */
export function readLifts(section: Spot): readonly ShaftSet[] {
  const order = at(section, "order");
  return order === undefined
    ? readRows(section, mostShafts)
    : putTogether(order, readBlocks(at(section, "blocks")!));
}

/** The rows of a section with `rows` or a `picture`. */
function readRows(section: Spot, mostShafts: number): readonly ShaftSet[] {
  const rows = at(section, "rows");
  if (rows === undefined) return readPicture(at(section, "picture")!);
  const lines = isList(rows) ? linesOfList(rows) : linesOfText(rows);
  if (lines.length === 0) throw wrong(rows, "bad-notation", `${wayTo(rows.path)} holds no rows`);
  try {
    return parseLifts(
      lines.map(({ text }) => text),
      { mostRows, mostShafts },
    );
  } catch (error) {
    if (!(error instanceof UnitsError)) throw error;
    const { line = 1 } = error.facts;
    const at = lines[Number(line) - 1]!;
    throw notationError(at.of, error, at.from);
  }
}

/** One line of a lift plan, the value it stands in, and where in that value's text it begins. */
interface Line {
  readonly text: string;
  readonly of: Spot;
  readonly from: number;
}

function linesOfList(rows: Spot): readonly Line[] {
  return items(rows).map((of) => ({ text: textOf(of), of, from: 0 }));
}

/** A line a row; empty lines are no rows. */
function linesOfText(of: Spot): readonly Line[] {
  let from = 0;
  const lines = textOf(of)
    .split("\n")
    .map((text) => {
      const line = { text, of, from };
      from += text.length + 1;
      return line;
    });
  return lines.filter(({ text }) => text.trim() !== "");
}

/** Reads every block; together they may name no more shafts than one plan may. */
function readBlocks(blocks: Spot): ReadonlyMap<string, readonly ShaftSet[]> {
  let left = mostShafts;
  const read = new Map<string, readonly ShaftSet[]>();
  for (const [name, block] of entries(blocks)) {
    const rows = readRows(block, left);
    left -= [...new Set(rows)].reduce((sum, row) => sum + row.length, 0);
    read.set(name, rows);
  }
  return read;
}

/** Adds rows to a lift plan, as long as it does not grow out of bounds. */
function append(lifts: ShaftSet[], from: Spot, rows: readonly ShaftSet[]): void {
  if (lifts.length + rows.length > mostRows) {
    throw wrong(from, "too-large", `with ${wayTo(from.path)} the lifts come to more than ${mostRows} rows`);
  }
  for (const row of rows) lifts.push(row);
}

function putTogether(order: Spot, blocks: ReadonlyMap<string, readonly ShaftSet[]>): readonly ShaftSet[] {
  const lifts: ShaftSet[] = [];
  for (const part of items(order)) {
    const { name, times } = readPart(part);
    const block = blocks.get(name);
    if (block === undefined) {
      const meant = nearest(name, [...blocks.keys()]);
      const hint =
        meant === undefined ? `the blocks are ${[...blocks.keys()].join(", ")}` : `did you mean "${meant}"?`;
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
