/** Which row of its block each row of a changed block was. */
import type { LiftChange } from "./lift-change.js";
import type { ChangedBlock, WovenBlock } from "./woven-block.js";

/** A row of a block that is woven in a row of the plan. */
export interface BlockRow {
  /** What the block is called. */
  readonly block: string;
  /** The row of the block, from 0; left out for a row of the border that it is framed in. */
  readonly row?: number;
  /** The repeat of the block within its line of the order, from 0. */
  readonly again: number;
}

/** What is woven in a row of the plan. */
export interface WovenRow {
  /** The line of the weaving order, from 0. */
  readonly entry: number;
  /** The block, and those beside it. */
  readonly blocks: readonly BlockRow[];
}

/**
 * What each row of a weaving order is, row 1 first: the line, the blocks, and the row of each of them.
 * @param order what is woven, first to last, without a block that fills a length (`filledOrder` works that out)
 * @param rowsOf the rows of a block by its name
 * @example wovenRows([parseWovenBlock("moth *2 upside-down")], () => 2)[2].blocks // [{ block: "moth", row: 1, again: 1 }]
 */
export function wovenRows(
  order: readonly WovenBlock[],
  rowsOf: (block: string) => number,
): readonly WovenRow[] {
  return order.flatMap((line, entry) => {
    const parts = [line, ...(line.beside ?? [])].map((part) => blockRows(part, rowsOf(part.block)));
    const longest = Math.max(...parts.map(({ length }) => length));
    return Array.from({ length: longest }, (_, row): WovenRow => {
      const blocks = parts.map((rows) => {
        const one = rows[row % rows.length]!;
        return { ...one, again: one.again + Math.floor(row / rows.length) * timesIn(rows) };
      });
      return { entry, blocks };
    });
  });
}

/** The row of its block, from 0, that each row of a changed block was; undefined for a row of a border. */
function blockOrigins({ changes }: ChangedBlock, rows: number): readonly (number | undefined)[] {
  return changes.reduce<readonly (number | undefined)[]>(
    changedOrigins,
    Array.from({ length: rows }, (_, row) => row),
  );
}

function blockRows(part: ChangedBlock, rows: number): readonly BlockRow[] {
  const seen = new Map<number | undefined, number>();
  return blockOrigins(part, rows).map((row) => {
    const again = seen.get(row) ?? 0;
    seen.set(row, again + 1);
    return { block: part.block, ...(row === undefined ? {} : { row }), again: row === undefined ? 0 : again };
  });
}

/** How often the block comes in its rows. */
function timesIn(rows: readonly BlockRow[]): number {
  return rows.reduce((most, { again }) => Math.max(most, again + 1), 0);
}

function changedOrigins(
  rows: readonly (number | undefined)[],
  change: LiftChange,
): readonly (number | undefined)[] {
  switch (change.change) {
    case "repeated":
      return Array.from({ length: change.times }, () => rows).flat();
    case "fitted":
      return Array.from({ length: Math.floor(change.rows / rows.length) }, () => rows).flat();
    case "brick":
      return [...rows, ...rows];
    case "upside-down":
    case "turned":
      return rows.toReversed();
    case "framed":
    case "bordered": {
      const length = change.change === "framed" ? change.rows : change.beside.length;
      const border = Array.from({ length }, () => undefined);
      return [...border, ...rows, ...border];
    }
    case "alternating": {
      const other = changedOrigins(rows, change.every);
      return Array.from({ length: change.times }, (_, i) => (i % 2 === 0 ? rows : other)).flat();
    }
    default:
      return rows;
  }
}
