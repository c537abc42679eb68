import type { BitGrid } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import type { UnitShafts } from "@drawcord/units";
import { ChartError } from "./error.js";
import { checkChart } from "./threaded-chart.js";

/** Units threaded alike. */
export interface UnitKind {
  readonly shafts: UnitShafts;
  /** The units, from 0. */
  readonly units: readonly number[];
}

/** Units that cannot have both what the chart asks of them in a row. */
export interface Quarrel {
  /** From 0. */
  readonly row: number;
  /** The shafts of the units that should be drawn; none for static units. */
  readonly shafts: ShaftSet;
  /** The units, from 0, that should be drawn. */
  readonly drawn: readonly number[];
  /** The units, from 0, on those shafts that should stay. */
  readonly undrawn: readonly number[];
}

/** What a threading can do for a chart. */
export interface Weavable {
  /** The lifts that weave the chart, with as few handles as can be dropped one by one; none where units quarrel. */
  readonly lifts: readonly ShaftSet[] | undefined;
  /** By row, then by the first unit that should be drawn. */
  readonly quarrels: readonly Quarrel[];
}

/** The kinds of unit in a threading, as they first come. */
export function unitKinds(threading: readonly UnitShafts[]): readonly UnitKind[] {
  const kinds = new Map<string, { readonly shafts: UnitShafts; readonly units: number[] }>();
  threading.forEach((shafts, unit) => {
    const key = shafts.join();
    const kind = kinds.get(key) ?? { shafts, units: [] };
    kinds.set(key, kind);
    kind.units.push(unit);
  });
  return [...kinds.values()];
}

/** Refuses a chart that has not a column for each unit. */
export function checkUnits(chart: BitGrid, threading: readonly UnitShafts[]): void {
  checkChart(chart);
  if (chart.columns === threading.length) return;
  throw new ChartError(
    "wrong-length",
    `the chart is ${chart.columns} units wide; the threading has ${threading.length} units`,
    { found: chart.columns, expected: threading.length },
  );
}

/**
 * Whether a threading can weave a chart, with the lifts that do; else which units quarrel, in which row and over which
 * shafts. A shaft can be drawn in a row when all of its units should be.
 * @param threading an entry a unit, unit 1 first; an empty one is a static unit
 * @param chart rows x units, row 0 woven first, raised where a unit is drawn
 * @throws {ChartError} `empty-chart`, or `wrong-length` when the chart has not a column for each unit
 * @example weavable([[1], [2], [1]], fromText("#..")).quarrels // [{ row: 0, shafts: [1], drawn: [0], undrawn: [2] }]
 */
export function weavable(threading: readonly UnitShafts[], chart: BitGrid): Weavable {
  checkUnits(chart, threading);
  const kinds = unitKinds(threading);
  const shafts = [...new Set(threading.flat())].sort((a, b) => a - b);
  const quarrels: Quarrel[] = [];
  const lifts = Array.from({ length: chart.rows }, (_, row) => {
    const isDrawn = (unit: number) => chart.get(row, unit);
    const held = new Set(kinds.flatMap((kind) => (kind.units.every(isDrawn) ? [] : kind.shafts)));
    const free = shafts.filter((shaft) => !held.has(shaft));
    for (const kind of kinds) {
      const drawn = kind.units.filter(isDrawn);
      if (drawn.length === 0 || kind.shafts.some((shaft) => !held.has(shaft))) continue;
      const onSame = kinds.filter((other) => other.shafts.some((shaft) => kind.shafts.includes(shaft)));
      const undrawn = onSame.flatMap(({ units }) => units.filter((unit) => !isDrawn(unit)));
      quarrels.push({ row, shafts: kind.shafts, drawn, undrawn: undrawn.sort((a, b) => a - b) });
    }
    return fewest(free, kinds);
  });
  return { lifts: quarrels.length === 0 ? lifts : undefined, quarrels };
}

/** The shafts without those whose every unit another one draws, the highest dropped first. */
function fewest(shafts: ShaftSet, kinds: readonly UnitKind[]): ShaftSet {
  const joined = kinds.filter((kind) => kind.shafts.length > 1);
  if (joined.length === 0) return shafts;
  const lift = new Set(shafts);
  for (const shaft of shafts.toReversed()) {
    lift.delete(shaft);
    const missed = kinds.some(
      (kind) => kind.shafts.includes(shaft) && !kind.shafts.some((other) => lift.has(other)),
    );
    if (missed) lift.add(shaft);
  }
  return shafts.filter((shaft) => lift.has(shaft));
}

/**
 * A quarrel in a sentence, units and rows counted from 1.
 * @param quarrel what `weavable` found, rows and units counted from 0
 * @example quarrelSentence({ row: 0, shafts: [1], drawn: [0], undrawn: [2] }) // "row 1: shaft 1 should be drawn for unit 1 and stay for unit 3"
 */
export function quarrelSentence(quarrel: Quarrel): string {
  const { row, shafts, drawn, undrawn } = quarrel;
  if (shafts.length === 0) {
    return `row ${row + 1}: ${names(drawn)} should be drawn and ${drawn.length === 1 ? "is" : "are"} static`;
  }
  const which = shafts.length === 1 ? `shaft ${shafts[0]}` : `shafts ${shafts.join(", ")}`;
  return `row ${row + 1}: ${which} should be drawn for ${names(drawn)} and stay for ${names(undrawn)}`;
}

function names(units: readonly number[]): string {
  const shown = units.slice(0, 6).map((unit) => unit + 1);
  const more = units.length > shown.length ? ` and ${units.length - shown.length} more` : "";
  return `${units.length === 1 ? "unit" : "units"} ${shown.join(", ")}${more}`;
}
