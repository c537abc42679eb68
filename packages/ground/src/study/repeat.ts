import { type BitGrid, crop, tile, transpose } from "@drawcord/grid";
import { modulo, upTo } from "../arithmetic.js";

/** What a drawdown is taken to be. */
export interface RepeatOptions {
  /** A piece cut anywhere, whose last repeat need not be whole; by default whole repeats. */
  readonly piece?: boolean;
}

/**
 * The least repeat of a drawdown, from its first end and pick on; tiled, it gives the drawdown back.
 * @param drawdown whole repeats, or a piece with the option `piece`
 * @param options whether the drawdown is a piece; by default it is whole repeats
 * @example toText(leastRepeat(fromText(".#.#\n#.#."))) // ".#\n#."
 */
export function leastRepeat(drawdown: BitGrid, { piece = false }: RepeatOptions = {}): BitGrid {
  const rows = leastPeriod(rowKeys(drawdown), piece);
  const columns = leastPeriod(rowKeys(transpose(drawdown)), piece);
  return crop(drawdown, { row: 0, column: 0, rows, columns });
}

/**
 * Whether two repeats are the same cloth, begun at any end and any pick.
 * @param a one repeat
 * @param b another repeat
 * @example sameCloth(fromText(".#\n#."), fromText("#.\n.#")) // true
 */
export function sameCloth(a: BitGrid, b: BitGrid): boolean {
  if (a.rows !== b.rows || a.columns !== b.columns) return false;
  const wanted = rowKeys(a);
  for (let end = 0; end < Math.max(1, b.columns); end++) {
    const keys = rowKeys(shifted(b, 0, end));
    for (let pick = 0; pick < Math.max(1, b.rows); pick++) {
      if (wanted.every((key, i) => key === keys[(i + pick) % keys.length])) return true;
    }
  }
  return false;
}

/** A repeat begun at another pick and end. */
export function shifted(grid: BitGrid, pick: number, end: number): BitGrid {
  if (grid.rows === 0 || grid.columns === 0) return grid;
  const twice = tile(grid, 2 * grid.rows, 2 * grid.columns);
  return crop(twice, {
    row: modulo(pick, grid.rows),
    column: modulo(end, grid.columns),
    rows: grid.rows,
    columns: grid.columns,
  });
}

/** Each row as a string of its words, so that rows can be compared. */
export function rowKeys({ rows, stride, words }: BitGrid): string[] {
  return upTo(rows).map((row) =>
    upTo(stride)
      .map((i) => words[row * stride + i])
      .join(),
  );
}

function leastPeriod(keys: readonly string[], piece: boolean): number {
  for (let period = 1; period < keys.length; period++) {
    if (!piece && keys.length % period !== 0) continue;
    if (keys.every((key, i) => i < period || key === keys[i - period])) return period;
  }
  return keys.length;
}
