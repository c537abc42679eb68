import { type BitGrid, transpose } from "@drawcord/grid";
import type { HarnessPlan, UnitShafts } from "@drawcord/units";
import { ChartError } from "./error.js";

/** Refuses a chart without rows or without units. */
export function checkChart(chart: BitGrid): void {
  if (chart.rows > 0 && chart.columns > 0) return;
  throw new ChartError(
    "empty-chart",
    `the chart has ${chart.rows} rows and ${chart.columns} units; expected one of each or more`,
    { rows: chart.rows, units: chart.columns },
  );
}

/**
 * The threading and the lifts that weave a chart exactly, on the least number of pattern shafts: one for each column
 * unlike the others, numbered from unit 1 on; a unit that no row draws is static.
 * @param chart rows x units, row 0 woven first, raised where a unit is drawn
 * @throws {ChartError} `empty-chart` when the chart has no rows or no units
 * @example threadedChart(fromText("#..\n#.#")) // { threading: [[1], [], [2]], lifts: [[1, 2], [1]] }
 */
export function threadedChart(chart: BitGrid): HarnessPlan {
  checkChart(chart);
  const columns = transpose(chart);
  const shaftOf = new Map<string, number>();
  const drawers: number[] = [];
  const threading = Array.from({ length: columns.rows }, (_, unit): UnitShafts => {
    const words = rowWords(columns, unit);
    if (words.every((word) => word === 0)) return [];
    const key = words.join();
    const known = shaftOf.get(key);
    if (known !== undefined) return [known];
    const shaft = drawers.push(unit);
    shaftOf.set(key, shaft);
    return [shaft];
  });
  const lifts = Array.from({ length: chart.rows }, (_, row) =>
    drawers.flatMap((unit, i) => (chart.get(row, unit) ? [i + 1] : [])),
  );
  return { threading, lifts };
}

/** The words of a row. */
function rowWords(grid: BitGrid, row: number): number[] {
  const first = row * grid.stride;
  return Array.from({ length: grid.stride }, (_, i) => grid.words[first + i]!);
}
