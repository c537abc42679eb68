import { type BitGrid, rowCounts, xor } from "@drawcord/grid";
import type { ShaftSet } from "@drawcord/ground";
import { chartOf, type HarnessPlan, type UnitShafts } from "@drawcord/units";
import { checkUnits, type UnitKind, unitKinds } from "./weavable.js";

/** A cloth woven for a chart, and how far it is from it. */
export interface NearestCloth extends HarnessPlan {
  /** The chart that is woven. */
  readonly chart: BitGrid;
  /** Raised where the woven chart differs from the one asked for. */
  readonly changed: BitGrid;
  /** Squares changed. */
  readonly changes: number;
  /** No cloth within the same means changes fewer squares than this; it is the best there is when both are the same. */
  readonly atLeast: number;
}

/** A plan seen against the chart it was made for. */
export function measured(plan: HarnessPlan, wanted: BitGrid, atLeast: number): NearestCloth {
  const chart = chartOf(plan);
  const changed = xor(chart, wanted);
  const changes = rowCounts(changed).reduce((sum, count) => sum + count, 0);
  return { ...plan, chart, changed, changes, atLeast };
}

/** Shafts that units on several tie together, up to which every lift is tried. */
const MOST_TRIED = 12;

/** Shafts that units on several tie together, with the kinds of unit that hang on them. */
interface Knot {
  readonly shafts: ShaftSet;
  readonly kinds: readonly UnitKind[];
}

/**
 * The lifts that come nearest to a chart with a threading as it stands: the fewest squares changed. A shaft whose units
 * hang on it alone is drawn where most of them should be (not drawn where as many should stay). Shafts that units on
 * several tie together are tried in every combination up to 12; past that one handle after the other is changed while
 * it helps, and `atLeast` says what could not be better.
 * @param threading an entry a unit, unit 1 first; an empty one is a static unit
 * @param wanted rows x units, row 0 woven first, raised where a unit is drawn
 * @throws {ChartError} `empty-chart`, or `wrong-length` when the chart has not a column for each unit
 * @example nearestLifts([[1], [2], [1]], fromText("###\n#..")).lifts // [[], [1, 2]]
 */
export function nearestLifts(threading: readonly UnitShafts[], wanted: BitGrid): NearestCloth {
  checkUnits(wanted, threading);
  const kinds = unitKinds(threading);
  const knots = knotsOf(kinds.filter(({ shafts }) => shafts.length > 0));
  const still = kinds.find(({ shafts }) => shafts.length === 0);
  let atLeast = 0;
  const lifts = Array.from({ length: wanted.rows }, (_, row) => {
    atLeast += still?.units.filter((unit) => wanted.get(row, unit)).length ?? 0;
    const lift: number[] = [];
    for (const knot of knots) {
      const balances = knot.kinds.map(({ shafts, units }) => {
        const drawn = units.filter((unit) => wanted.get(row, unit)).length;
        return { shafts, drawn, undrawn: units.length - drawn };
      });
      const best = bestLift(knot.shafts, balances);
      lift.push(...best.lift);
      atLeast += best.atLeast;
    }
    return lift.sort((a, b) => a - b);
  });
  return measured({ threading, lifts }, wanted, atLeast);
}

/** How many units of a kind should be drawn in a row, and how many should stay. */
interface Balance {
  readonly shafts: ShaftSet;
  readonly drawn: number;
  readonly undrawn: number;
}

/** The kinds, told apart by the shafts that tie them together. */
function knotsOf(kinds: readonly UnitKind[]): readonly Knot[] {
  const knots: { shafts: Set<number>; kinds: UnitKind[] }[] = [];
  for (const kind of kinds) {
    const met = knots.filter(({ shafts }) => kind.shafts.some((shaft) => shafts.has(shaft)));
    const joined = {
      shafts: new Set([...met.flatMap(({ shafts }) => [...shafts]), ...kind.shafts]),
      kinds: [...met.flatMap((knot) => knot.kinds), kind],
    };
    for (const knot of met) knots.splice(knots.indexOf(knot), 1);
    knots.push(joined);
  }
  return knots.map(({ shafts, kinds: tied }) => ({ shafts: [...shafts].sort((a, b) => a - b), kinds: tied }));
}

function bestLift(
  shafts: ShaftSet,
  balances: readonly Balance[],
): { readonly lift: ShaftSet; readonly atLeast: number } {
  const changes = (isDrawn: (shaft: number) => boolean) =>
    balances.reduce((sum, kind) => sum + (kind.shafts.some(isDrawn) ? kind.undrawn : kind.drawn), 0);
  if (shafts.length <= MOST_TRIED) {
    let best = { lift: [] as ShaftSet, atLeast: changes(() => false) };
    for (let tried = 1; tried < 2 ** shafts.length; tried++) {
      const lift = shafts.filter((_, i) => (tried >>> i) & 1);
      const cost = changes((shaft) => lift.includes(shaft));
      if (cost < best.atLeast) best = { lift, atLeast: cost };
    }
    return best;
  }
  const lift = new Set<number>();
  for (let better = true; better; ) {
    better = false;
    for (const shaft of shafts) {
      const before = changes((other) => lift.has(other));
      const after = changes((other) => lift.has(other) !== (other === shaft));
      if (after >= before) continue;
      if (!lift.delete(shaft)) lift.add(shaft);
      better = true;
    }
  }
  return {
    lift: [...lift],
    atLeast: balances.reduce((sum, { drawn, undrawn }) => sum + Math.min(drawn, undrawn), 0),
  };
}
