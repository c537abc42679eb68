/** The rows of blocks over another threading, as the lifts that are wanted show them. */
import type { ShaftSet } from "@drawcord/ground";
import {
  type ChangedBlock,
  changedLifts,
  type LiftChange,
  type WovenBlock,
  wovenRows,
} from "@drawcord/units";
import type { ShaftMap } from "./shaft-map.js";

type Rows = readonly ShaftSet[];

/** What is woven of the blocks of a piece. */
export interface WovenPiece {
  readonly order: readonly WovenBlock[];
  /** The rows of its blocks as they were, by their names. */
  readonly blocks: Readonly<Record<string, Rows>>;
  /** The rows that its order is to come to, on the new shafts. */
  readonly wanted: Rows;
}

/** The rows of a block on the new shafts. */
export interface BlockRows {
  readonly rows: Rows;
  /** Whether they are numbered by the block's own shafts, for it is placed on others, or a border is built from it. */
  readonly isPlaced: boolean;
  /** Whether a line shows them as they stand. */
  readonly isShown: boolean;
}

/**
 * The rows of each block of a piece on the new shafts: each row where it is first woven, without what the blocks beside it
 * draw. Rows that no line shows as they stand are what most of their units did.
 */
export function rowsOfBlocks(
  { blocks, order, wanted }: WovenPiece,
  map: ShaftMap,
  shafts: number,
): ReadonlyMap<string, BlockRows> {
  const rowsOf = (name: string) => blocks[name]!;
  const parts = order.map((line) => [line, ...(line.beside ?? [])].map(partOf));
  const isPlaced = new Set([
    ...parts.flat().flatMap(({ block, place }) => (place === undefined ? [] : [block])),
    ...order.flatMap(stripsOf),
  ]);
  const found = new Map(
    Object.entries(blocks).map(([name, rows]) => [
      name,
      rows.map((row) => (isPlaced.has(name) ? row : map.mostly(row))),
    ]),
  );
  const seen = new Set<string>();
  wovenRows(order, (name) => rowsOf(name).length).forEach(({ blocks: inRow, entry }, row) => {
    inRow.forEach(({ block, row: own }, i) => {
      const { isShown, owned, place } = parts[entry]![i]!;
      const key = `${block} ${own}`;
      if (own === undefined || !isShown || seen.has(key)) return;
      seen.add(key);
      const drawn = (wanted[row] ?? []).filter((shaft) => owned.has(shaft));
      const local = place === undefined ? drawn : drawn.map((shaft) => place.indexOf(shaft) + 1);
      found.get(block)![own] = local;
    });
  });
  return new Map(
    [...found].map(([name, rows]) => [
      name,
      { rows, isPlaced: isPlaced.has(name), isShown: rows.some((_row, i) => seen.has(`${name} ${i}`)) },
    ]),
  );

  function partOf(part: ChangedBlock) {
    const { block, changes } = part;
    const woven = changes.reduce(
      (rows, change) => changedLifts(rows, once(change), shafts, rowsOf),
      rowsOf(block),
    );
    const [first, ...others] = changes;
    const place = first?.change === "placed" ? map.all(first.on) : undefined;
    const isShown = (place === undefined ? changes : others).every(isStill);
    return { block, isShown, place, owned: new Set(map.all([...new Set(woven.flat())])) };
  }
}

/** Blocks that borders are built from. */
function stripsOf(line: WovenBlock): readonly string[] {
  const changes = [line, ...(line.beside ?? [])].flatMap((part) => part.changes);
  return changes.flatMap((change) => (change.change === "bordered" ? [change.strip] : []));
}

/** Whether a change leaves each row what it was. */
function isStill(change: LiftChange): boolean {
  switch (change.change) {
    case "repeated":
    case "fitted":
    case "upside-down":
      return true;
    case "alternating":
      return isStill(change.every);
    default:
      return false;
  }
}

/** A change that draws the same shafts, each as seldom as can be. */
function once(change: LiftChange): LiftChange {
  if (change.change === "alternating") return { ...change, times: Math.min(2, change.times) };
  return change.change === "repeated" ? { ...change, times: 1 } : change;
}
