import { many } from "@drawcord/base";
import { type NearestCloth, type Quarrel, quarrelSentence } from "@drawcord/chart";
import type { BitGrid } from "@drawcord/grid";
import { describeThreading, printLifts, printShafts, printThreading } from "@drawcord/units";
import { oneLine } from "../printable.js";
import { wrapText } from "../text.js";
import { shaftsUsed } from "./weave-chart.js";

/** What was made of a chart. */
export interface ChartResult {
  readonly file: string;
  readonly wanted: BitGrid;
  readonly cloth: NearestCloth;
  /** Pattern shafts that the chart takes as it is. */
  readonly shaftsTaken: number;
  /** Why a threading that was given cannot weave the chart as it is; none where it can, or none was given. */
  readonly quarrels: readonly Quarrel[];
}

/** The result for people: shafts, squares changed, the notation, and the changed squares drawn. */
export function* chartText(
  { file, wanted, cloth, shaftsTaken, quarrels }: ChartResult,
  width: number,
): Iterable<string> {
  const { threading, changes, atLeast } = cloth;
  const shafts = shaftsUsed(cloth);
  const still = threading.filter((unit) => unit.length === 0).length;
  const taken = shafts === shaftsTaken ? "" : `; the chart as it is takes ${shaftsTaken}`;
  yield facts(
    [
      ["chart", `${oneLine(file)}, ${wanted.rows} rows x ${wanted.columns} units`],
      ["shafts", `${shafts}${still === 0 ? "" : `, and ${many(still, "static unit")}`}${taken}`],
      ["changed", changed(changes, atLeast, wanted.rows * wanted.columns)],
      ["threading", printThreading(threading)],
      ["in words", describeThreading(threading)],
      ["lifts", `${many(new Set(cloth.lifts.map(printShafts)).size, "different row")}`],
    ],
    width,
  );
  if (changes === 0) return;
  yield* quarrelLines(quarrels);
  yield `\nThe cloth, the last row on top: # drawn, . not; + drawn and - not drawn against the chart\n`;
  for (let row = wanted.rows - 1; row >= 0; row--) yield `${pictureLine(cloth, wanted, row)}\n`;
}

/** The most quarrels that are told. */
const MOST_TOLD = 8;

function* quarrelLines(quarrels: readonly Quarrel[]): Iterable<string> {
  if (quarrels.length === 0) return;
  yield "\nThis threading cannot weave the chart as it is:\n";
  for (const quarrel of quarrels.slice(0, MOST_TOLD)) yield `  ${quarrelSentence(quarrel)}\n`;
  if (quarrels.length > MOST_TOLD) yield `  and ${quarrels.length - MOST_TOLD} more\n`;
}

function changed(changes: number, atLeast: number, squares: number): string {
  if (changes === 0) return "no square";
  const proof =
    changes === atLeast
      ? "no choice on these shafts and lifts changes fewer"
      : `no choice on these shafts and lifts changes fewer than ${atLeast}`;
  return `${many(changes, "square")} of ${squares}; ${proof}`;
}

/** One row as it is woven, with what was changed. */
function pictureLine({ chart, changed }: NearestCloth, wanted: BitGrid, row: number): string {
  return Array.from({ length: wanted.columns }, (_, unit) => {
    const drawn = chart.get(row, unit);
    return changed.get(row, unit) ? (drawn ? "+" : "-") : drawn ? "#" : ".";
  }).join("");
}

/** The result for a script; units and rows count from 1. */
export function chartJson({ file, wanted, cloth, shaftsTaken, quarrels }: ChartResult): object {
  return {
    file,
    rows: wanted.rows,
    units: wanted.columns,
    shafts: shaftsUsed(cloth),
    shaftsTaken,
    changes: cloth.changes,
    atLeast: cloth.atLeast,
    proved: cloth.changes === cloth.atLeast,
    threading: printThreading(cloth.threading),
    lifts: printLifts(cloth.lifts),
    quarrels: quarrels.map(quarrelSentence),
    picture: Array.from({ length: wanted.rows }, (_, row) => pictureLine(cloth, wanted, row)),
  };
}

/** Facts in two columns, the second wrapped beside the first. */
function facts(rows: readonly (readonly [name: string, text: string])[], width: number): string {
  return rows
    .map(
      ([name, text]) =>
        `${name.padEnd(11)}${wrapText(text, Math.max(40, Math.min(width, 100) - 11)).join(`\n${" ".repeat(11)}`)}\n`,
    )
    .join("");
}
