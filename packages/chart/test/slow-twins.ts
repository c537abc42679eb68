import type { BitGrid } from "@drawcord/grid";
import type { UnitShafts } from "@drawcord/units";

/** The fewest squares that change when the columns of a chart go on so many shafts, by trying every way to thread them. */
export function slowFewestChanges(chart: BitGrid, shafts: number, mirrored = false): number {
  const units = chart.columns;
  const bundles = Array.from({ length: mirrored ? Math.ceil(units / 2) : units }, (_, unit) =>
    mirrored ? [...new Set([unit, units - 1 - unit])] : [unit],
  );
  const threaded: number[][] = Array.from({ length: shafts }, () => []);
  const rows = Array.from({ length: chart.rows }, (_, row) => row);
  const drawnIn = (columns: readonly number[], row: number) =>
    columns.filter((unit) => chart.get(row, unit)).length;
  const changesOn = (columns: readonly number[]) =>
    rows.reduce(
      (sum, row) => sum + Math.min(drawnIn(columns, row), columns.length - drawnIn(columns, row)),
      0,
    );

  const tryFrom = (bundle: number, used: number, still: number): number => {
    if (bundle === bundles.length)
      return still + threaded.reduce((sum, columns) => sum + changesOn(columns), 0);
    const columns = bundles[bundle]!;
    let fewest = tryFrom(bundle + 1, used, still + rows.reduce((sum, row) => sum + drawnIn(columns, row), 0));
    for (let shaft = 0; shaft < Math.min(used + 1, shafts); shaft++) {
      const before = threaded[shaft]!;
      threaded[shaft] = [...before, ...columns];
      fewest = Math.min(fewest, tryFrom(bundle + 1, Math.max(used, shaft + 1), still));
      threaded[shaft] = before;
    }
    return fewest;
  };
  return tryFrom(0, 0, 0);
}

/** The fewest squares that change when a chart is woven with a threading, by trying every lift for every row. */
export function slowNearestLifts(threading: readonly UnitShafts[], chart: BitGrid): number {
  const shafts = [...new Set(threading.flat())];
  let total = 0;
  for (let row = 0; row < chart.rows; row++) {
    let fewest = Number.POSITIVE_INFINITY;
    for (let tried = 0; tried < 2 ** shafts.length; tried++) {
      const lift = shafts.filter((_, i) => Math.floor(tried / 2 ** i) % 2 === 1);
      const changes = threading.filter(
        (unit, u) => unit.some((shaft) => lift.includes(shaft)) !== chart.get(row, u),
      );
      fewest = Math.min(fewest, changes.length);
    }
    total += fewest;
  }
  return total;
}
