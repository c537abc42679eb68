/**
 * Columns put into groups that are threaded alike. The squares of a group that change are, row by row, the fewer of
 * those drawn and those not. One group more, the still one, is never drawn: it changes every square drawn in it.
 *
 * An *item* is what must stay together whatever happens: columns alike, or a column and its mirror image.
 */

/** The items of a chart. */
export interface Items {
  readonly count: number;
  readonly rows: number;
  /** `count * rows`: how many squares of the item are drawn in the row, item after item. */
  readonly drawn: Int32Array;
  /** Columns in each item. */
  readonly columns: Int32Array;
  /** Squares that change when the item has a group of its own. */
  readonly alone: Int32Array;
  /** Squares that change when the item is never drawn. */
  readonly still: Int32Array;
}

/** The group of each item; `STILL` for those that are never drawn. */
export type Grouping = Int32Array;

export const STILL = -1;

/** Items from the drawn squares of each, row by row. */
export function itemsOf(
  rows: number,
  drawn: readonly ArrayLike<number>[],
  columns: readonly number[],
): Items {
  const count = drawn.length;
  const all = new Int32Array(count * rows);
  const alone = new Int32Array(count);
  const still = new Int32Array(count);
  drawn.forEach((squares, item) => {
    all.set(squares, item * rows);
    for (let row = 0; row < rows; row++) {
      alone[item]! += Math.min(squares[row]!, columns[item]! - squares[row]!);
      still[item]! += squares[row]!;
    }
  });
  return { count, rows, drawn: all, columns: Int32Array.from(columns), alone, still };
}

/** A group that grows and shrinks: its drawn squares row by row, its columns, and the squares that change. */
export interface Group {
  readonly drawn: Int32Array;
  columns: number;
  changes: number;
}

export function emptyGroup(rows: number): Group {
  return { drawn: new Int32Array(rows), columns: 0, changes: 0 };
}

/** The squares that change in a group with an item put in (`sign` 1) or taken out (`sign` -1). */
export function changesWith(group: Group, items: Items, item: number, sign: 1 | -1): number {
  const { rows, drawn } = items;
  const columns = group.columns + sign * items.columns[item]!;
  const first = item * rows;
  let changes = 0;
  for (let row = 0; row < rows; row++) {
    const up = group.drawn[row]! + sign * drawn[first + row]!;
    changes += up + up < columns ? up : columns - up;
  }
  return changes;
}

/** Puts an item into a group (`sign` 1) or takes it out (`sign` -1); `changes` as `changesWith` said. */
export function moveItem(group: Group, items: Items, item: number, sign: 1 | -1, changes: number): void {
  const first = item * items.rows;
  for (let row = 0; row < items.rows; row++) group.drawn[row]! += sign * items.drawn[first + row]!;
  group.columns += sign * items.columns[item]!;
  group.changes = changes;
}

/** The squares that change with a grouping. */
export function changesOf(items: Items, grouping: Grouping): number {
  const groups = new Map<number, Group>();
  let changes = 0;
  grouping.forEach((at, item) => {
    if (at === STILL) {
      changes += items.still[item]!;
      return;
    }
    const group = groups.get(at) ?? emptyGroup(items.rows);
    groups.set(at, group);
    moveItem(group, items, item, 1, changesWith(group, items, item, 1));
  });
  for (const group of groups.values()) changes += group.changes;
  return changes;
}
