import { many } from "@drawcord/base";
import type { RecipePiece } from "@drawcord/files";
import {
  type HandleOrder,
  heavyLift,
  type LiftWork,
  liftCaution,
  loomNeeds,
  printShafts,
  type RowWork,
  type UnitDraft,
  wovenRows,
} from "@drawcord/units";
import { oneLine } from "../printable.js";
import { wrapText } from "../text.js";
import { csvLine } from "./csv.js";
import { heading } from "./heading.js";
import { weight } from "./weight.js";

/** The lifts of a recipe, and what they ask. */
export interface LiftList {
  readonly file: string;
  readonly title: string | undefined;
  readonly piece: RecipePiece;
  /** Whether nothing else is woven on the warp. */
  readonly isOnly: boolean;
  readonly work: LiftWork;
  /** None where there are too many shafts to weigh their order. */
  readonly order: HandleOrder | undefined;
}

/** Rows alike that follow each other. */
interface LiftStretch {
  readonly first: RowWork;
  readonly last: RowWork;
}

/** What the units of a draft are drawn by: a cord each, or the handles of shafts. */
export function drawnByIn(draft: UnitDraft): "cords" | "handles" {
  return loomNeeds(draft).singleUnitDraw ? "cords" : "handles";
}

/** The list for people: the last row on top, so that it is woven from the bottom up; then what the rows come to. */
export function* liftText(list: LiftList, width: number): Iterable<string> {
  const { file, title, piece, isOnly, work, order } = list;
  const { blockOf, lineOf } = blocksOf(piece);
  const stretches = stretchesOf(work.rows, lineOf);
  const lines = stretches.map(({ first, last }) => [
    span(first.row + 1, last.row + 1),
    span(first.picks[0] + 1, last.picks[1] + 1),
    handles(first.drawn),
    changes(first),
    String(first.units),
    first.grams === undefined ? "" : weight(first.grams),
    blockOf(first.row, last.row),
  ]);
  const drawnBy = drawnByIn(piece.draft);
  const heads = [
    "row",
    "picks",
    drawnBy,
    "pull, let go",
    "units",
    work.heaviest.grams === undefined ? "" : "weight",
    piece.order === undefined ? "" : "block",
  ];
  const widths = heads.map((head, i) =>
    lines.reduce((most, line) => Math.max(most, line[i]!.length), head.length),
  );
  const row = (cells: readonly string[]) =>
    cells
      .map((cell, i) => cell.padEnd(widths[i]!))
      .join("  ")
      .trimEnd();

  yield `${heading(file, title)}\n`;
  if (!isOnly) yield `${oneLine(piece.name)}, ${many(piece.count, "piece")}\n`;
  yield `woven from the bottom up\n\n      ${row(heads)}\n`;
  for (const line of lines.toReversed()) yield `[ ]   ${row(line)}\n`;

  const { heaviest, pulls, picks } = work;
  const most = heaviest.grams === undefined ? "" : `, ${weight(heaviest.grams)}`;
  yield `\nheaviest   row ${heaviest.row + 1}: ${many(heaviest.units, "unit")}${most}\n`;
  yield `${drawnBy.padEnd(11)}${many(pulls, "pull")} in ${many(work.rows.length, "row")}, ${many(picks, "pick")}; ${many(work.changes, "change")}\n`;
  if (order !== undefined && order.grasps < order.graspsNow) {
    yield `order      hung in this order: ${order.order.join(" ")}: ${many(order.grasps, "hand movement")} instead of ${order.graspsNow}\n`;
  }
  yield `\n${wrapText(liftCaution(heaviest.grams), Math.min(width, 80)).join("\n")}\n`;
}

/** The list for a script; everything counts from 1, row 1 first. */
export function liftJson({ file, title, piece, isOnly, work, order }: LiftList) {
  const { blockOf } = blocksOf(piece);
  return {
    file,
    title,
    ...(isOnly ? {} : { piece: piece.name, count: piece.count }),
    rows: work.rows.map(({ row, picks, drawn, pulled, released, units, grams }) => ({
      row: row + 1,
      picks: [picks[0] + 1, picks[1] + 1],
      drawn,
      pulled,
      released,
      units,
      grams,
      ...(piece.order === undefined ? {} : { block: blockOf(row, row) }),
    })),
    heaviest: { row: work.heaviest.row + 1, units: work.heaviest.units, grams: work.heaviest.grams },
    pulls: work.pulls,
    changes: work.changes,
    picks: work.picks,
    handleOrder: order,
    caution: liftCaution(work.heaviest.grams),
  };
}

/** The list for a table, a line a row, row 1 first. */
export function* liftCsv({ isOnly, piece, work }: LiftList, withHead: boolean): Iterable<string> {
  const { blockOf } = blocksOf(piece);
  const names = isOnly ? [] : [piece.name];
  if (withHead) {
    const head = [
      "row",
      "first pick",
      "last pick",
      "drawn",
      "pulled",
      "released",
      "units",
      "grams",
      "caution",
      "block",
    ];
    yield csvLine(isOnly ? head : ["piece", ...head]);
  }
  for (const { row, picks, drawn, pulled, released, units, grams } of work.rows) {
    const sets = [drawn, pulled, released].map((set) => (set.length === 0 ? "" : printShafts(set)));
    // The first line carries the caution for all rows; a heavy row its own.
    const caution =
      row === 0 ? liftCaution(work.heaviest.grams) : grams === undefined ? "" : heavyLift(grams);
    yield csvLine([
      ...names,
      row + 1,
      picks[0] + 1,
      picks[1] + 1,
      ...sets,
      units,
      grams,
      caution,
      blockOf(row, row),
    ]);
  }
}

/** What rows are called by their blocks, and the line of the order that each is of. */
interface BlockNames {
  /** The block of a stretch of rows in one line, with its repeats where it comes again; nothing where there are no blocks. */
  readonly blockOf: (first: number, last: number) => string;
  readonly lineOf: (row: number) => number;
}

function blocksOf({ order, blocks = {} }: RecipePiece): BlockNames {
  if (order === undefined) return { blockOf: () => "", lineOf: () => 0 };
  const woven = wovenRows(order, (block) => blocks[block]?.length ?? 1);
  const repeatOf = (row: number) => (woven[row]!.blocks[0]?.again ?? 0) + 1;
  const again = new Set(woven.flatMap(({ entry }, row) => (repeatOf(row) > 1 ? [entry] : [])));
  return {
    lineOf: (row) => woven[row]!.entry,
    blockOf: (first, last) => {
      const { entry } = woven[first]!;
      const { beside = [], block } = order[entry]!;
      const own = again.has(entry) ? `${block} ${span(repeatOf(first), repeatOf(last))}` : block;
      return [own, ...beside.map((other) => other.block)].join(" with ");
    },
  };
}

/** Rows alike that follow each other in one line of the order. */
function stretchesOf(rows: readonly RowWork[], lineOf: (row: number) => number): readonly LiftStretch[] {
  const stretches: { first: RowWork; last: RowWork }[] = [];
  for (const row of rows) {
    const before = stretches.at(-1);
    const isAlike = row.pulled.length + row.released.length === 0;
    if (before !== undefined && isAlike && lineOf(row.row) === lineOf(before.first.row)) before.last = row;
    else stretches.push({ first: row, last: row });
  }
  return stretches;
}

/** Handles in groups of neighbours. */
function handles(drawn: readonly number[]): string {
  return drawn.length === 0 ? "none" : printShafts(drawn).replaceAll(" ", "  ");
}

function changes({ pulled, released }: RowWork): string {
  const signed = [
    ...(pulled.length === 0 ? [] : [`+ ${printShafts(pulled)}`]),
    ...(released.length === 0 ? [] : [`- ${printShafts(released)}`]),
  ];
  return signed.join("  ");
}

function span(first: number, last: number): string {
  return first === last ? `${first}` : `${first}-${last}`;
}
