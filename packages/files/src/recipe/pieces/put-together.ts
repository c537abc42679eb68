/** Puts the blocks of a lift plan together in their order. */
import { nearest } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import {
  blocksNamed,
  blocksTogether,
  type ChangedBlock,
  changedLifts,
  filledOrder,
  type LiftChange,
  parseWovenBlock,
  UnitsError,
  type WovenBlock,
} from "@drawcord/units";
import type { FileError } from "../../error.js";
import { printable } from "../../printable.js";
import { attempt, Unread } from "../../tree/problems.js";
import { items, leaveOut, type Spot, textOf, wayTo, wrong } from "../../tree/spot.js";
import { notation, notationError } from "../notation.js";

/** The rows of every block by its name; undefined of a block that cannot be read. */
export type Blocks = ReadonlyMap<string, readonly ShaftSet[] | undefined>;

/** Blocks put together. */
export interface PutTogether {
  readonly lifts: readonly ShaftSet[];
  /** The lines of the order, each with its number of repeats. */
  readonly order: readonly WovenBlock[];
  /** Rows that no whole repeat of a block that fills the piece had room in. */
  readonly over: number;
}

/** The most rows that blocks come to together. */
const mostRows = 1_000_000;

/** The most that all changes of blocks together may work through: shafts, and rows. */
const mostWork = 20_000_000;

/**
 * The blocks in their order, each changed as its line says. A line that cannot be read is told (`bad-notation`,
 * `unknown-block`) and left out.
 * @param patternShafts how many pattern shafts the units hang on, for changes that name none
 * @param rows the rows that the order is to come to, for a block that fills them; undefined where no length is known
 * @throws {FileError} `bad-notation` for what cannot fill a length, `too-large`; {Unread} where no line can be read
 */
export function putTogether(
  order: Spot,
  blocks: Blocks,
  patternShafts: number,
  rows: number | undefined,
): PutTogether {
  const { problems } = order.tree;
  const known = new Map<string, WovenBlock>();
  let named = 0;
  const written = readEach(order, (part) => {
    const text = textOf(part);
    const line = known.get(text) ?? notation(part, parseWovenBlock);
    if (!known.has(text)) named += shaftsNamed(line);
    if (named > mostWork) throw tooLarge(part, `the changes of blocks name more than ${mostWork} shafts`);
    known.set(text, line);
    for (const block of blocksNamed(line)) blockNamed(part, block, blocks);
    return line;
  });
  const repeated = filled(written, blocks, rows);
  const lifts: ShaftSet[] = [];
  let work = 0;
  const lines = written.flatMap(({ part }, i) => {
    const line = repeated.order[i]!;
    const woven = attempt(problems, () => {
      const parts = partsOf(line).map((one) => ({ name: one.block, lifts: changed(part, one) }));
      return parts.length === 1
        ? parts[0]!.lifts
        : notation(part, () => blocksTogether(parts, line.cutShort));
    });
    if (woven === undefined) {
      leaveOut(part);
      return [];
    }
    if (lifts.length + woven.length > mostRows) {
      throw tooLarge(part, `the lifts come to more than ${mostRows} rows`);
    }
    for (const row of woven) lifts.push(row);
    return [line];
  });
  if (lifts.length === 0) throw new Unread();
  return { lifts, order: lines, over: repeated.over };

  function changed(part: Spot, { block, changes }: ChangedBlock): readonly ShaftSet[] {
    let now = blocks.get(block)!;
    for (const change of changes) {
      work += workOf(now, change, patternShafts);
      if (work > mostWork) throw tooLarge(part, `the changes of blocks name more than ${mostWork} shafts`);
      const before = now;
      now = notation(part, () => changedLifts(before, change, patternShafts, (name) => blocks.get(name)));
      work += now.length;
    }
    return now;
  }
}

/** A line of an order, and where it stands. */
interface Line {
  readonly part: Spot;
  readonly line: WovenBlock;
}

/** What each entry of an order says; one that cannot be read is left out. */
function readEach(order: Spot, read: (part: Spot) => WovenBlock): readonly Line[] {
  return items(order).flatMap((part) => {
    const line = attempt(order.tree.problems, () => read(part));
    if (line === undefined) leaveOut(part);
    return line === undefined ? [] : [{ part, line }];
  });
}

/** The order with its filling block repeated; what keeps it from that is said at its line. */
function filled(lines: readonly Line[], blocks: Blocks, rows: number | undefined) {
  try {
    const order = lines.map(({ line }) => line);
    return filledOrder(order, (block) => blocks.get(block)!.length, rows);
  } catch (error) {
    if (!(error instanceof UnitsError)) throw error;
    const line = lines[Number(error.facts["entry"] ?? 1) - 1];
    throw line === undefined ? new Unread() : (notationError(line.part, error) ?? error);
  }
}

function partsOf(line: WovenBlock): readonly ChangedBlock[] {
  return [line, ...(line.beside ?? [])];
}

/** How many shafts the changes of a line name. */
function shaftsNamed(line: WovenBlock): number {
  const changes = partsOf(line).flatMap((part) => part.changes);
  return changes.reduce((sum, change) => sum + shaftsOf(change, 0), 0);
}

function blockNamed(part: Spot, name: string, blocks: Blocks): void {
  if (blocks.get(name) !== undefined) return;
  if (blocks.has(name)) throw new Unread();
  const known = [...blocks.keys()];
  const meant = nearest(name, known);
  const hint = meant === undefined ? `the blocks are ${known.join(", ")}` : `did you mean "${meant}"?`;
  throw wrong(part, "unknown-block", `no block is called "${printable(name)}"; ${printable(hint, 300)}`);
}

function tooLarge(part: Spot, sentence: string): FileError {
  return wrong(part, "too-large", `with ${wayTo(part.path)} ${sentence}`);
}

/** What a change may come to, told before it is made. */
function workOf(rows: readonly ShaftSet[], change: LiftChange, patternShafts: number): number {
  // Rows that come again are not copied out.
  if (change.change === "repeated" || change.change === "fitted") return rows.length;
  const named = rows.reduce((sum, row) => sum + row.length, 0);
  return rows.length + named + rows.length * shaftsOf(change, patternShafts);
}

/** How many shafts a change may add to each row. */
function shaftsOf(change: LiftChange, patternShafts: number): number {
  switch (change.change) {
    case "alternating":
      return shaftsOf(change.every, patternShafts);
    case "framed":
      return change.across.length + (change.edge?.length ?? 0);
    case "bordered":
      return (change.on?.length ?? patternShafts) + change.beside.length;
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
