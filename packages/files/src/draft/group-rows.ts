import type { BitGrid } from "@drawcord/grid";

/** The rows of a grid, told apart. */
export interface RowGroups {
  /** The group of each row, from 0, numbered as they first come. */
  readonly group: readonly number[];
  /** The first row of each group. */
  readonly first: readonly number[];
}

/** Puts rows that are alike into one group: by a hash of their words, then word by word. */
export function groupRows(grid: BitGrid): RowGroups {
  const { rows, stride, words } = grid;
  const first: number[] = [];
  const byHash = new Map<number, number[]>();
  const group = Array.from({ length: rows }, (_, row) => {
    let hash = 0;
    for (let i = row * stride; i < (row + 1) * stride; i++)
      hash = (Math.imul(hash, 0x01000193) ^ words[i]!) | 0;
    const likely = byHash.get(hash) ?? [];
    const known = likely.find((candidate) => sameRow(grid, first[candidate]!, row));
    if (known !== undefined) return known;
    likely.push(first.length);
    byHash.set(hash, likely);
    return first.push(row) - 1;
  });
  return { group, first };
}

function sameRow({ stride, words }: BitGrid, a: number, b: number): boolean {
  for (let i = 0; i < stride; i++) if (words[a * stride + i] !== words[b * stride + i]) return false;
  return true;
}
