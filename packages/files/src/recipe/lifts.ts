import type { ShaftSet } from "@drawcord/ground";
import { parseLifts, parseRows, UnitsError } from "@drawcord/units";
import { attempt } from "../tree/problems.js";
import {
  allEntries,
  allItems,
  at,
  isLeftOut,
  isList,
  leaveOut,
  need,
  type Spot,
  textOf,
  wayTo,
  wrong,
} from "../tree/spot.js";
import { notationError, readable } from "./notation.js";
import { readPicture } from "./picture.js";
import { type Blocks, type PutTogether, putTogether } from "./pieces/put-together.js";

/** What the lifts of a recipe may come to, and each of its blocks beside those before it. */
interface Room {
  readonly rows: number;
  /** Shafts named in all rows together, runs counted out. */
  readonly shafts: number;
}

const room: Room = { rows: 1_000_000, shafts: 20_000_000 };

/** What the lifts of a section are read with. */
export interface LiftPlanOptions {
  /** How many pattern shafts the units hang on, for changes that name none. */
  readonly patternShafts: number;
  /** Blocks that are read already, which the order may name too. */
  readonly shared?: Blocks;
  /** The rows that the lifts are to come to, where a length is known. */
  readonly rows?: number;
}

/** The lifts of a section, and how they are put together. */
export interface ReadLifts extends Pick<PutTogether, "lifts" | "over"> {
  /** The lines of the order, each with its number of repeats; none where the lifts are rows or a picture. */
  readonly order?: PutTogether["order"];
  readonly blocks: Blocks;
}

/**
 * The lifts of the section `lifts`, row 1 first: its rows, its picture, or its blocks in their order. What cannot be read
 * is told (`bad-notation`, `unknown-block`): of a row, the shafts that can be read are drawn; an entry of the order is left
 * out.
 * @throws {FileError} `too-large`; {Unread} where there is nothing to be read
 */
export function readLifts(
  section: Spot,
  { patternShafts, shared = new Map(), rows }: LiftPlanOptions,
): ReadLifts {
  const order = at(section, "order");
  const own = at(section, "blocks");
  const blocks: Blocks = own === undefined ? shared : new Map([...shared, ...readBlocks(own)]);
  if (order === undefined) return { lifts: readRows(section, room), over: 0, blocks };
  return { ...putTogether(order, blocks, patternShafts, rows), blocks };
}

/** The rows of a block that was read before, row 1 first. */
export function rowsOfBlock(block: Spot): readonly ShaftSet[] {
  return readRows(block, room);
}

/** The rows of a section with `rows` or a `picture`. */
function readRows(section: Spot, { rows: mostRows, shafts: mostShafts }: Room): readonly ShaftSet[] {
  const rows = at(section, "rows");
  if (rows === undefined) return readPicture(need(section, "picture"), mostRows);
  const lines = linesOf(rows);
  if (lines.length === 0) throw wrong(rows, "bad-notation", `${wayTo(rows.path)} holds no rows`);
  const texts = lines.map(({ text }) => text);
  const parse = (all: readonly string[]) => parseLifts(all, { mostRows, mostShafts });
  try {
    return parse(texts);
  } catch (error) {
    if (!(error instanceof UnitsError)) throw error;
    if (error.code === "too-large") throw errorOfLine(lines, error);
  }
  try {
    return parse(readableLines(lines, mostShafts));
  } catch (error) {
    throw errorOfLine(lines, error);
  }
}

/** An error of a lift plan at the line that it names. */
function errorOfLine(lines: readonly LiftLine[], error: unknown): unknown {
  if (!(error instanceof UnitsError)) return error;
  const { of, from } = lines[Number(error.facts["line"] ?? 1) - 1]!;
  return notationError(of, error, from);
}

/** The text of each line of a lift plan as far as it can be read; what cannot is told. */
export function readableLines(lines: readonly LiftLine[], mostShafts = room.shafts): readonly string[] {
  const sound = new Set<string>();
  let named = 0;
  const read = (text: string) => {
    named += parseRows(text)[0]!.length;
    sound.add(text);
  };
  return lines.map(({ from, of, text }) =>
    // A plan that names more is refused as it is.
    sound.has(text) || named > mostShafts
      ? text
      : readable(of, text, from, { read, filler: "", nothing: NO_SHAFTS }),
  );
}

/** A row that draws nothing. */
const NO_SHAFTS = "none";

/** One line of a lift plan, the value it stands in, and where in that value's text it begins. */
export interface LiftLine {
  readonly text: string;
  readonly of: Spot;
  readonly from: number;
}

/** The lines of a lift plan in a list, or in a text with a line a row. */
export function linesOf(rows: Spot): readonly LiftLine[] {
  return isList(rows) ? linesOfList(rows) : linesOfText(rows);
}

/** A row that has no text stands for one that draws nothing, so that the rows after it keep their numbers. */
function linesOfList(rows: Spot): readonly LiftLine[] {
  return allItems(rows).map((of) => ({ text: isLeftOut(of) ? NO_SHAFTS : textOf(of), of, from: 0 }));
}

/** A line a row; empty lines are no rows. */
function linesOfText(of: Spot): readonly LiftLine[] {
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
export function readBlocks(blocks: Spot): Blocks {
  let left = room;
  const read = new Map<string, readonly ShaftSet[] | undefined>();
  for (const [name, block] of allEntries(blocks)) {
    if (read.has(name)) continue;
    const rows = isLeftOut(block) ? undefined : attempt(blocks.tree.problems, () => readRows(block, left));
    read.set(name, rows);
    if (rows === undefined) leaveOut(block);
    else left = { rows: left.rows - rows.length, shafts: left.shafts - shaftsIn([...new Set(rows)]) };
  }
  return read;
}

function shaftsIn(rows: readonly ShaftSet[]): number {
  return rows.reduce((sum, row) => sum + row.length, 0);
}
