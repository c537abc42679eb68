/** Puts the blocks of a lift plan together in their order. */
import { nearest } from "@drawcord/base";
import type { ShaftSet } from "@drawcord/ground";
import {
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
import { allItems, isLeftOut, type Spot, wayTo, wrong } from "../../tree/spot.js";
import { notation, notationError } from "../notation.js";

/** The rows of every block by its name; undefined of a block that cannot be read. */
export type Blocks = ReadonlyMap<string, readonly ShaftSet[] | undefined>;

/** Blocks put together. */
export interface Woven {
  readonly lifts: readonly ShaftSet[];
  /** The lines of the order, each with its number of repeats; a line that cannot be read weaves nothing. */
  readonly order: readonly WovenBlock[];
  /** Rows that no whole repeat of a block that fills the piece had room in. */
  readonly over: number;
}

/** The most rows that blocks come to together. */
const mostRows = 1_000_000;

/** The most that all changes of blocks together may work through: shafts, and rows. */
const mostWork = 20_000_000;

/** The most shafts that the lines of an order may name for their changes. */
const mostNamed = 2_000_000;

/**
 * The blocks in their order, each changed as its line says.
 * @param patternShafts how many pattern shafts the units hang on, for changes that name none
 * @param rows the rows that the order is to come to, for a block that fills them; undefined where no length is known
 * @throws {FileError} `too-large`; {Unread} where no line weaves anything
 */
export function putTogether(
  order: Spot,
  blocks: Blocks,
  patternShafts: number,
  rows: number | undefined,
): Woven {
  const { problems } = order.tree;
  const spots = allItems(order);
  let named = 0;
  const written = spots.map((part) => {
    const line = isLeftOut(part) ? undefined : attempt(problems, () => readLine(part, blocks));
    // Told before the lines after it are taken apart: shafts of a change are many from few letters.
    named += line === undefined ? 0 : shaftsNamed(line);
    if (named > mostNamed) throw tooLarge(part, `the lines of the order name more than ${mostNamed} shafts`);
    return line ?? nothing;
  });
  const { order: lines, over } = attempt(problems, () => filled(spots, written, blocks, rows)) ?? {
    order: written,
    over: 0,
  };
  const lifts: ShaftSet[] = [];
  let work = 0;
  lines.forEach((line, i) => {
    const part = spots[i]!;
    const together = () => {
      const parts = partsOf(line).map((one) => ({ name: one.block, lifts: changed(part, one) }));
      return parts.length === 1
        ? parts[0]!.lifts
        : notation(part, () => blocksTogether(parts, line.cutShort));
    };
    const woven = attempt(problems, together) ?? [];
    if (lifts.length + woven.length > mostRows) {
      throw tooLarge(part, `the lifts come to more than ${mostRows} rows`);
    }
    for (const row of woven) lifts.push(row);
  });
  if (lifts.length === 0) throw new Unread();
  return { lifts, order: lines, over };

  function changed(part: Spot, { block, changes }: ChangedBlock): readonly ShaftSet[] {
    let now = blocks.get(block) ?? [];
    for (const change of changes) {
      work += workOf(now, change, patternShafts);
      if (work > mostWork) throw tooLarge(part, `the changes of blocks name more than ${mostWork} shafts`);
      const before = now;
      now = notation(part, () => changedLifts(before, change, patternShafts));
      work += now.length;
    }
    return now;
  }
}

/** How many shafts the changes of a line name. */
function shaftsNamed(line: WovenBlock): number {
  return partsOf(line).reduce(
    (sum, { changes }) => sum + changes.reduce((own, change) => own + shaftsOf(change, 0), 0),
    0,
  );
}

/** A line of the order that weaves nothing. */
const nothing: WovenBlock = { block: "", changes: [] };

/** A line of the order, all of whose blocks are there. */
function readLine(part: Spot, blocks: Blocks): WovenBlock {
  const line = notation(part, parseWovenBlock);
  for (const { block } of partsOf(line)) checkBlock(part, block, blocks);
  return line;
}

/** The order with its filling block repeated; what keeps it from that is said at its line. */
function filled(
  spots: readonly Spot[],
  lines: readonly WovenBlock[],
  blocks: Blocks,
  rows: number | undefined,
) {
  try {
    return filledOrder(lines, (block) => blocks.get(block)?.length ?? 0, rows);
  } catch (error) {
    if (!(error instanceof UnitsError)) throw error;
    const part = spots[Number(error.facts["entry"] ?? 1) - 1]!;
    throw notationError(part, error) ?? error;
  }
}

function partsOf(line: WovenBlock): readonly ChangedBlock[] {
  return [line, ...(line.beside ?? [])];
}

function checkBlock(part: Spot, name: string, blocks: Blocks): void {
  if (blocks.get(name) !== undefined) return;
  // What is wrong with the block is told there.
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
