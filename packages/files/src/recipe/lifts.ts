import { nearest } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import { changedLifts, type LiftChange, parseLifts, parseWovenBlock, UnitsError } from "@drawcord/units";
import type { FileError } from "../error.js";
import { printable } from "../printable.js";
import { at, entries, isList, items, type Spot, textOf, wayTo, wrong } from "../tree/spot.js";
import { notation, notationError } from "./notation.js";
import { readPicture } from "./picture.js";

/** What the lifts of a recipe may come to, and each of its blocks beside those before it. */
interface Room {
  readonly rows: number;
  /** Shafts named in all rows together, runs counted out. */
  readonly shafts: number;
}

const room: Room = { rows: 1_000_000, shafts: 20_000_000 };

/**
 * The lifts of the section `lifts`, row 1 first: its rows, its picture, or its blocks in their order.
 * @param patternShafts how many pattern shafts the units hang on, for changes that name none
 * @throws {FileError} `bad-notation`, `unknown-block`, `too-large`
 */
export function readLifts(section: Spot, patternShafts: number): readonly ShaftSet[] {
  const order = at(section, "order");
  if (order === undefined) return readRows(section, room);
  return putTogether(order, readBlocks(at(section, "blocks")!), patternShafts);
}

/** The rows of a block that was read before, row 1 first. */
export function rowsOfBlock(block: Spot): readonly ShaftSet[] {
  return readRows(block, room);
}

/** The rows of a section with `rows` or a `picture`. */
function readRows(section: Spot, { rows: mostRows, shafts: mostShafts }: Room): readonly ShaftSet[] {
  const rows = at(section, "rows");
  if (rows === undefined) return readPicture(at(section, "picture")!, mostRows);
  const lines = linesOf(rows);
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
export interface Line {
  readonly text: string;
  readonly of: Spot;
  readonly from: number;
}

/** The lines of a lift plan in a list, or in a text with a line a row. */
export function linesOf(rows: Spot): readonly Line[] {
  return isList(rows) ? linesOfList(rows) : linesOfText(rows);
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

/** Reads every block; together they may come to no more than one plan may. */
function readBlocks(blocks: Spot): ReadonlyMap<string, readonly ShaftSet[]> {
  let left = room;
  const read = new Map<string, readonly ShaftSet[]>();
  for (const [name, block] of entries(blocks)) {
    const rows = readRows(block, left);
    left = { rows: left.rows - rows.length, shafts: left.shafts - shaftsIn([...new Set(rows)]) };
    read.set(name, rows);
  }
  return read;
}

/** The blocks in their order, each changed as its line says. */
function putTogether(
  order: Spot,
  blocks: ReadonlyMap<string, readonly ShaftSet[]>,
  patternShafts: number,
): readonly ShaftSet[] {
  const lifts: ShaftSet[] = [];
  let work = 0;
  for (const part of items(order)) {
    const { block, changes } = notation(part, parseWovenBlock);
    let rows = blockNamed(part, block, blocks);
    for (const change of changes) {
      work += workOf(rows, change, patternShafts);
      if (work > mostWork) throw tooLarge(part, `the changes of blocks name more than ${mostWork} shafts`);
      const before = rows;
      rows = notation(part, () => changedLifts(before, change, patternShafts));
      work += rows.length;
    }
    if (lifts.length + rows.length > room.rows) {
      throw tooLarge(part, `the lifts come to more than ${room.rows} rows`);
    }
    for (const row of rows) lifts.push(row);
  }
  return lifts;
}

function blockNamed(
  part: Spot,
  name: string,
  blocks: ReadonlyMap<string, readonly ShaftSet[]>,
): readonly ShaftSet[] {
  const rows = blocks.get(name);
  if (rows !== undefined) return rows;
  const known = [...blocks.keys()];
  const meant = nearest(name, known);
  const hint = meant === undefined ? `the blocks are ${known.join(", ")}` : `did you mean "${meant}"?`;
  throw wrong(part, "unknown-block", `no block is called "${printable(name)}"; ${printable(hint, 300)}`);
}

function tooLarge(part: Spot, sentence: string): FileError {
  return wrong(part, "too-large", `with ${wayTo(part.path)} ${sentence}`);
}

function shaftsIn(rows: readonly ShaftSet[]): number {
  return rows.reduce((sum, row) => sum + row.length, 0);
}

/** The most that all changes of blocks together may work through: shafts, and rows. */
const mostWork = 20_000_000;

/** What a change may come to, told before it is made. */
function workOf(rows: readonly ShaftSet[], change: LiftChange, patternShafts: number): number {
  // Rows that come again are not copied out.
  if (change.change === "repeated" || change.change === "fitted") return rows.length;
  return rows.length + shaftsIn(rows) + rows.length * shaftsOf(change, patternShafts);
}

/** How many shafts a change may add to each row. */
function shaftsOf(change: LiftChange, patternShafts: number): number {
  switch (change.change) {
    case "alternating":
      return shaftsOf(change.every, patternShafts);
    case "framed":
      return change.across.length + (change.edge?.length ?? 0);
    case "mirrored":
    case "turned":
    case "exchanged":
    case "brick":
      return change.on?.length ?? patternShafts;
    case "half-drop":
      return change.beside.length;
    default:
      return 0;
  }
}
