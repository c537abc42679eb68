import {
  type ChartOptions,
  chartCloth,
  MOST_CHART_SHAFTS,
  type NearestCloth,
  nearestLifts,
} from "@drawcord/chart";
import { type BitGrid, fromCells } from "@drawcord/grid";
import { singleUnitThreading, type UnitShafts } from "@drawcord/units";
import { CliError } from "../error.js";

/** How a chart is to be woven. */
export interface ChartMeans extends ChartOptions {
  /** The threading that is on the loom. */
  readonly threading?: readonly UnitShafts[];
  /** A cord for each unit. */
  readonly singleUnit: boolean;
}

/**
 * The chart with as many units as the loom has: static units are shared to both sides.
 * @throws {CliError} `too-wide` when the chart has more
 */
export function onUnits(chart: BitGrid, units: number, file: string): BitGrid {
  if (chart.columns > units) {
    const sentence = `${file}: the chart is ${chart.columns} units wide; there are ${units} units`;
    throw new CliError("too-wide", sentence, { file, found: chart.columns, units });
  }
  const left = Math.floor((units - chart.columns) / 2);
  return fromCells(chart.rows, units, (row, unit) => {
    const column = unit - left;
    return column >= 0 && column < chart.columns && chart.get(row, column);
  });
}

/**
 * The cloth of a chart by the means asked for.
 * @throws {UnitsError} for means that cannot be; {CliError} `too-many-shafts` when the chart takes more than 200
 */
export function weaveChart(chart: BitGrid, means: ChartMeans): NearestCloth {
  const { threading, singleUnit, ...options } = means;
  if (threading !== undefined) return nearestLifts(threading, chart);
  if (singleUnit) return nearestLifts(singleUnitThreading(chart.columns), chart);
  const cloth = chartCloth(chart, options);
  const shafts = shaftsUsed(cloth);
  if (shafts > MOST_CHART_SHAFTS) {
    const sentence = `the chart takes ${shafts} pattern shafts, more than the ${MOST_CHART_SHAFTS} that are worked out; ask for fewer with --shafts, or for a cord a unit with --single-unit`;
    throw new CliError("too-many-shafts", sentence, { shafts });
  }
  return cloth;
}

/** How many pattern shafts a cloth is threaded on. */
export function shaftsUsed(cloth: Pick<NearestCloth, "threading">): number {
  return new Set(cloth.threading.flat()).size;
}
