import { many } from "@drawcord/base";
import { type HandleOrder, type LiftWork, printShafts, type RowWork, WEIGHT_CAUTION } from "@drawcord/units";
import { wrap } from "../text.js";
import { csvLine } from "./csv.js";
import { heading } from "./heading.js";
import { weight } from "./weight.js";

/** The lifts of a recipe, and what they ask. */
export interface LiftList {
  readonly file: string;
  readonly title: string | undefined;
  readonly work: LiftWork;
  /** None where there are too many shafts to weigh their order. */
  readonly order: HandleOrder | undefined;
}

/** Rows alike that follow each other. */
interface Stretch {
  readonly first: RowWork;
  readonly last: RowWork;
}

/** The list for people: the last row on top, so that it is woven from the bottom up; then what the rows come to. */
export function* liftText({ file, title, work, order }: LiftList, width: number): Iterable<string> {
  const stretches = stretchesOf(work.rows);
  const lines = stretches.map(({ first, last }) => [
    span(first.row + 1, last.row + 1),
    span(first.picks[0] + 1, last.picks[1] + 1),
    handles(first.drawn),
    changes(first),
    String(first.units),
    first.grams === undefined ? "" : weight(first.grams),
  ]);
  const heads = [
    "row",
    "picks",
    "handles",
    "pull, let go",
    "units",
    work.heaviest.grams === undefined ? "" : "weight",
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
  yield `woven from the bottom up\n\n      ${row(heads)}\n`;
  for (const line of lines.toReversed()) yield `[ ]   ${row(line)}\n`;

  const { heaviest, pulls, picks } = work;
  const most = heaviest.grams === undefined ? "" : `, ${weight(heaviest.grams)}`;
  yield `\nheaviest   row ${heaviest.row + 1}: ${many(heaviest.units, "unit")}${most}\n`;
  yield `handles    ${many(pulls, "pull")} in ${many(work.rows.length, "row")}, ${many(picks, "pick")}; ${many(work.changes, "change")}\n`;
  if (order !== undefined && order.grasps < order.graspsNow) {
    yield `order      hung as ${order.order.join(" ")}, they would take ${order.grasps} grasps for ${order.graspsNow}\n`;
  }
  yield `\n${wrap(WEIGHT_CAUTION, Math.min(width, 80)).join("\n")}\n`;
}

/** The list for a script; everything counts from 1, row 1 first. */
export function liftJson({ file, title, work, order }: LiftList): object {
  return {
    file,
    title,
    rows: work.rows.map(({ row, picks, drawn, pulled, released, units, grams }) => ({
      row: row + 1,
      picks: [picks[0] + 1, picks[1] + 1],
      drawn,
      pulled,
      released,
      units,
      grams,
    })),
    heaviest: { row: work.heaviest.row + 1, units: work.heaviest.units, grams: work.heaviest.grams },
    pulls: work.pulls,
    changes: work.changes,
    picks: work.picks,
    handleOrder: order,
    caution: WEIGHT_CAUTION,
  };
}

/** The list for a table, a line a row, row 1 first. */
export function* liftCsv({ work }: LiftList): Iterable<string> {
  yield csvLine(["row", "first pick", "last pick", "drawn", "pulled", "released", "units", "grams"]);
  for (const { row, picks, drawn, pulled, released, units, grams } of work.rows) {
    const sets = [drawn, pulled, released].map((set) => (set.length === 0 ? "" : printShafts(set)));
    yield csvLine([row + 1, picks[0] + 1, picks[1] + 1, ...sets, units, grams]);
  }
}

function stretchesOf(rows: readonly RowWork[]): readonly Stretch[] {
  const stretches: { first: RowWork; last: RowWork }[] = [];
  for (const row of rows) {
    const before = stretches.at(-1);
    if (before !== undefined && row.pulled.length + row.released.length === 0) before.last = row;
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
