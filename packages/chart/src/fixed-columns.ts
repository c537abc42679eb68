/**
 * Columns made alike where some squares may not change: two columns that differ in such a square never come together. From
 * each column by itself the two cheapest to make alike are joined again and again, then single columns move while that helps.
 */
import { type BitGrid, fromCells } from "@drawcord/grid";
import { ChartError } from "./error.js";

/** A column told apart, and the units that have it. */
interface Item {
  readonly units: readonly number[];
  /** By row: whether it is drawn, and whether it may not change. */
  readonly drawn: Uint8Array;
  readonly fixed: Uint8Array;
}

/** Columns that are made alike. */
interface Group {
  items: Item[];
  /** By row: columns that are drawn, columns, and what a square that may not change asks for: 0 nothing, 1 drawn, 2 not. */
  readonly drawn: Int32Array;
  count: number;
  readonly asked: Uint8Array;
  changes: number;
}

const IMPOSSIBLE = Number.POSITIVE_INFINITY;

/**
 * The chart with at most so many columns unlike each other that draw anything, no fixed square of it changed.
 * @param wanted rows x units
 * @param most columns unlike each other that there may be
 * @param fixed rows x units, raised where a square may not change
 * @throws {ChartError} `fixed-squares` when the squares that may not change take more columns
 */
export function fixedColumns(wanted: BitGrid, most: number, fixed: BitGrid): BitGrid {
  const { rows, columns } = wanted;
  const groups = itemsOf(wanted, fixed).map((item) => grown(emptyGroup(rows), item));
  const still = emptyGroup(rows);
  while (groups.length > most) join(groups, still, most);
  improve([still, ...groups]);

  const groupOf = new Map<number, Group>();
  for (const group of groups)
    for (const { units } of group.items) for (const unit of units) groupOf.set(unit, group);
  return fromCells(rows, columns, (row, unit) => {
    const group = groupOf.get(unit);
    return group !== undefined && isDrawn(group, row);
  });
}

/** The columns that draw anything, told apart by what they draw and what may not change. */
function itemsOf(wanted: BitGrid, fixed: BitGrid): readonly Item[] {
  const told = new Map<string, { units: number[]; drawn: Uint8Array; fixed: Uint8Array }>();
  for (let unit = 0; unit < wanted.columns; unit++) {
    const drawn = Uint8Array.from({ length: wanted.rows }, (_, row) => Number(wanted.get(row, unit)));
    if (!drawn.includes(1)) continue;
    const kept = Uint8Array.from({ length: wanted.rows }, (_, row) => Number(fixed.get(row, unit)));
    const key = `${drawn.join("")}|${kept.join("")}`;
    const item = told.get(key) ?? { units: [], drawn, fixed: kept };
    told.set(key, item);
    item.units.push(unit);
  }
  return [...told.values()];
}

function emptyGroup(rows: number): Group {
  return { items: [], drawn: new Int32Array(rows), count: 0, asked: new Uint8Array(rows), changes: 0 };
}

/** Joins the two groups that it costs least to make alike, or leaves one undrawn where that costs less. */
function join(groups: Group[], still: Group, most: number): void {
  let best = { cost: IMPOSSIBLE, into: still, from: still };
  for (let i = 0; i < groups.length; i++) {
    const from = groups[i]!;
    for (const into of [still, ...groups.slice(i + 1)]) {
      const together = into === still ? undrawn(from) : changesTogether(into, from);
      const cost = together - from.changes - (into === still ? 0 : into.changes);
      if (cost < best.cost) best = { cost, into, from };
    }
  }
  if (best.cost === IMPOSSIBLE) {
    throw new ChartError(
      "fixed-squares",
      `the squares that may not change take ${groups.length} columns unlike each other; ${most} are asked for`,
      { found: groups.length, most },
    );
  }
  groups.splice(groups.indexOf(best.from), 1);
  for (const item of best.from.items) grown(best.into, item);
}

/** Moves single columns to other groups while that changes fewer squares. */
function improve(groups: readonly Group[]): void {
  const [still, ...drawing] = groups as [Group, ...Group[]];
  for (let better = true, round = 0; better && round < 20; round++) {
    better = false;
    for (const from of drawing) {
      for (const item of [...from.items]) {
        if (from.items.length === 1) break;
        const alone = grown(emptyGroup(item.drawn.length), item);
        const without = regrouped(
          from.items.filter((other) => other !== item),
          item.drawn.length,
        );
        let best: Group | undefined;
        let least = from.changes - without.changes;
        for (const into of [still, ...drawing]) {
          if (into === from) continue;
          const cost = into === still ? undrawn(alone) : changesTogether(into, alone) - into.changes;
          if (cost < least) [best, least] = [into, cost];
        }
        if (best === undefined) continue;
        grown(best, item);
        Object.assign(from, without);
        better = true;
      }
    }
  }
}

function regrouped(items: readonly Item[], rows: number): Group {
  return items.reduce(grown, emptyGroup(rows));
}

/** A group with another column in it. */
function grown(group: Group, item: Item): Group {
  group.items.push(item);
  group.count += item.units.length;
  item.drawn.forEach((drawn, row) => {
    if (drawn) group.drawn[row]! += item.units.length;
    if (item.fixed[row]) group.asked[row] = drawn ? 1 : 2;
  });
  group.changes = changesOf(group);
  return group;
}

function isDrawn({ asked, count, drawn }: Group, row: number): boolean {
  return asked[row] === 0 ? 2 * drawn[row]! > count : asked[row] === 1;
}

function changesOf(group: Group): number {
  let changes = 0;
  for (let row = 0; row < group.drawn.length; row++) {
    changes += isDrawn(group, row) ? group.count - group.drawn[row]! : group.drawn[row]!;
  }
  return changes;
}

/** Squares that change when two groups are made alike; none can where both keep a square that differs. */
function changesTogether(a: Group, b: Group): number {
  const count = a.count + b.count;
  let changes = 0;
  for (let row = 0; row < a.drawn.length; row++) {
    const drawn = a.drawn[row]! + b.drawn[row]!;
    const asked = a.asked[row]! | b.asked[row]!;
    if (asked === 3) return IMPOSSIBLE;
    changes += asked === 1 || (asked === 0 && 2 * drawn > count) ? count - drawn : drawn;
  }
  return changes;
}

/** Squares that change when a group is not drawn at all. */
function undrawn({ asked, drawn }: Group): number {
  return asked.includes(1) ? IMPOSSIBLE : drawn.reduce((sum, columns) => sum + columns, 0);
}
