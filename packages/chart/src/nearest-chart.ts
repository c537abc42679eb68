import type { Watched } from "@drawcord/base";
import { type BitGrid, fromCells, transpose } from "@drawcord/grid";
import { pointThreading } from "@drawcord/units";
import { ChartError } from "./error.js";
import { fixedColumns } from "./fixed-columns.js";
import { mergedGroups } from "./group-merge.js";
import { pairedItems } from "./group-pairs.js";
import { type Grouped, searchedGroups } from "./group-search.js";
import { changesOf, type Items, itemsOf, STILL } from "./groups.js";
import { measured, type NearestCloth, nearestLifts } from "./nearest-lifts.js";
import { checkChart, threadedChart } from "./threaded-chart.js";

/** The most pattern shafts a chart is worked out for. */
export const MOST_CHART_SHAFTS = 200;

/**
 * What the cloth of a chart must keep to, and how the search for it is watched: one whose signal says so ends with the best
 * that it has found, and `atLeast` stays true.
 */
export interface ChartOptions extends Watched {
  /** The most pattern shafts; as many as the chart takes by default. */
  readonly shafts?: number;
  /** The most lifts unlike each other, those that draw nothing not counted; as many as the chart takes by default. */
  readonly lifts?: number;
  /**
   * `mirror`: the right half is the left one mirrored; `point`: the units are threaded in repeated points on `shafts`
   * shafts. `none` by default.
   */
  readonly symmetry?: "none" | "mirror" | "point";
  /**
   * Rows x units, raised where a square may not change: an outline, a letter, a border; none by default. The picture is then
   * good, but not always the nearest; `atLeast` is what no picture could better that may change every square.
   */
  readonly fixed?: BitGrid;
}

/**
 * The threading and the lifts for a chart: exact where the means suffice, else the nearest picture, the fewest squares
 * changed. Small charts (up to some twenty columns unlike each other) are searched whole; for large ones `atLeast` says
 * what no picture could better.
 * @param wanted rows x units, row 0 woven first, raised where a unit is drawn
 * @param options the means: shafts, lifts, symmetry, squares that must stay; none is bounded by default
 * @throws {ChartError} `empty-chart`; `bad-size` when `shafts` or `lifts` is not a whole number from 1 or there are more
 * than 200 shafts, when points are wanted without a number of shafts, or with squares that may not change and a symmetry;
 * `wrong-length` when those are given for another number of squares; `fixed-squares` when they take more shafts or lifts
 * @example chartCloth(fromText("##.\n##.\n#.."), { shafts: 1 }).changes // 1
 */
export function chartCloth(wanted: BitGrid, options: ChartOptions = {}): NearestCloth {
  checkChart(wanted);
  checkMost("pattern shafts", options.shafts, MOST_CHART_SHAFTS);
  checkMost("unlike lifts", options.lifts, Number.MAX_SAFE_INTEGER);
  const { shafts, lifts, symmetry = "none", fixed } = options;
  if (fixed !== undefined) return keepingFixed(wanted, fixed, options);
  const woven =
    symmetry === "point"
      ? inPoints(wanted, shafts)
      : inColumns(wanted, shafts, symmetry === "mirror", options);
  if (lifts === undefined) return woven;
  // Rows made alike leave columns alike as they were, mirrored or in points too.
  const fewer = nearestColumns(transpose(woven.chart), lifts, false, options);
  const chart = transpose(fewer.chart);
  const plan = symmetry === "point" ? nearestLifts(woven.threading, chart) : threadedChart(chart);
  const ofRows =
    woven.changes === 0 ? fewer.atLeast : nearestColumns(transpose(wanted), lifts, false, options).atLeast;
  const atLeast = Math.max(woven.atLeast, ofRows);
  return measured(plan, wanted, atLeast);
}

/** The chart on few shafts and lifts, the squares that may not change kept. */
function keepingFixed(
  wanted: BitGrid,
  fixed: BitGrid,
  { shafts, lifts, symmetry = "none", ...watched }: ChartOptions,
): NearestCloth {
  if (symmetry !== "none") {
    throw new ChartError(
      "bad-size",
      "squares that may not change are kept without a symmetry; one was asked for",
    );
  }
  if (fixed.rows !== wanted.rows || fixed.columns !== wanted.columns) {
    throw new ChartError(
      "wrong-length",
      `the squares that may not change are given for ${fixed.rows} rows and ${fixed.columns} units; the chart has ${wanted.rows} and ${wanted.columns}`,
      { found: fixed.rows, expected: wanted.rows },
    );
  }
  const onShafts = shafts === undefined ? wanted : fixedColumns(wanted, shafts, fixed);
  const chart =
    lifts === undefined ? onShafts : transpose(fixedColumns(transpose(onShafts), lifts, transpose(fixed)));
  const ofShafts = shafts === undefined ? 0 : nearestColumns(wanted, shafts, false, watched).atLeast;
  const ofLifts = lifts === undefined ? 0 : nearestColumns(transpose(wanted), lifts, false, watched).atLeast;
  return measured(threadedChart(chart), wanted, Math.max(ofShafts, ofLifts));
}

function checkMost(what: string, found: number | undefined, most: number): void {
  if (found === undefined || (Number.isSafeInteger(found) && found >= 1 && found <= most)) return;
  const upTo = most === Number.MAX_SAFE_INTEGER ? "" : ` to ${most}`;
  throw new ChartError("bad-size", `${found} ${what} are asked for; expected a whole number from 1${upTo}`, {
    found,
  });
}

function inColumns(
  wanted: BitGrid,
  shafts: number | undefined,
  mirrored: boolean,
  watched: Watched,
): NearestCloth {
  if (shafts === undefined && !mirrored) return measured(threadedChart(wanted), wanted, 0);
  const { chart, atLeast } = nearestColumns(wanted, shafts ?? wanted.columns, mirrored, watched);
  return measured(threadedChart(chart), wanted, atLeast);
}

/** Repeated points on a number of shafts, begun where they come nearest to the chart. */
function inPoints(wanted: BitGrid, shafts: number | undefined): NearestCloth {
  if (shafts === undefined) {
    throw new ChartError("bad-size", "points are asked for without a number of shafts; expected one");
  }
  const point = pointThreading(shafts);
  const cloths = point.map((_, first) => {
    const threading = Array.from(
      { length: wanted.columns },
      (_, unit) => point[(first + unit) % point.length]!,
    );
    return nearestLifts(threading, wanted);
  });
  return cloths.reduce((best, cloth) => (cloth.changes < best.changes ? cloth : best));
}

/** The nearest chart with at most so many columns unlike each other that draw anything. */
function nearestColumns(
  wanted: BitGrid,
  most: number,
  mirrored: boolean,
  watched: Watched,
): { readonly chart: BitGrid; readonly atLeast: number } {
  const { items, itemOf } = chartItems(wanted, mirrored);
  const groups = Math.min(most, items.count);
  const { grouping, atLeast } = grouped(items, groups, watched);

  const drawn = Array.from({ length: groups }, () => new Int32Array(items.rows));
  const columns = new Int32Array(groups);
  grouping.forEach((group, item) => {
    if (group === STILL) return;
    columns[group]! += items.columns[item]!;
    for (let row = 0; row < items.rows; row++) drawn[group]![row]! += items.drawn[item * items.rows + row]!;
  });
  const chart = fromCells(wanted.rows, wanted.columns, (row, unit) => {
    const item = itemOf[unit]!;
    const group = item < 0 ? STILL : grouping[item]!;
    return group !== STILL && 2 * drawn[group]![row]! > columns[group]!;
  });
  return { chart, atLeast };
}

/** The best grouping that is found. */
function grouped(items: Items, groups: number, watched: Watched): Grouped {
  if (groups === items.count) {
    const grouping = Int32Array.from({ length: groups }, (_, item) => item);
    const changes = changesOf(items, grouping);
    return { grouping, changes, atLeast: changes };
  }
  const pairs = pairedItems(items);
  return searchedGroups(items, pairs, groups, mergedGroups(items, pairs, groups), watched);
}

/** The items of a chart, columns alike made one; the item of each unit, -1 where no row draws it. */
function chartItems(
  wanted: BitGrid,
  mirrored: boolean,
): { readonly items: Items; readonly itemOf: Int32Array } {
  const { rows, columns: units } = wanted;
  const itemOf = new Int32Array(units);
  const told = new Map<string, number>();
  const drawn: Int32Array[] = [];
  const columns: number[] = [];
  for (let unit = 0; unit < (mirrored ? units / 2 : units); unit++) {
    const together = mirrored ? [...new Set([unit, units - 1 - unit])] : [unit];
    const squares = Int32Array.from({ length: rows }, (_, row) =>
      together.reduce((sum, column) => sum + Number(wanted.get(row, column)), 0),
    );
    const key = `${together.length}:${squares.join("")}`;
    const item = squares.every((square) => square === 0) ? -1 : (told.get(key) ?? drawn.length);
    for (const column of together) itemOf[column] = item;
    if (item < 0) continue;
    if (item === drawn.length) {
      told.set(key, item);
      drawn.push(new Int32Array(rows));
      columns.push(0);
    }
    for (let row = 0; row < rows; row++) drawn[item]![row]! += squares[row]!;
    columns[item]! += together.length;
  }
  return { items: itemsOf(rows, drawn, columns), itemOf };
}
