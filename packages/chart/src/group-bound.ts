/**
 * What no grouping can beat.
 *
 * With `c` what a group weaves, let `x(i)` be the squares of item `i` that change beyond those it changes alone, and
 * `pair(i, j)` the squares beyond both alone that change when `i` and `j` have a group to themselves: since that group
 * may do its best, `pair(i, j) <= x(i) + x(j)`. Tie every item of a group of `m` to the one with the least `x`: the
 * `m - 1` ties weigh at most `2 (m - 1) / m` times the sum of `x`. An item tied to the still group weighs just its
 * `x`. All groups so tied make a forest over the items and the still one, of no more trees than groups and one. So the
 * squares that change are at least those changed alone and `m / (2 (m - 1))` of the lightest such forest, where the
 * largest group has `m` items at the most: all but one for each other group.
 *
 * Squares that change in two sets of items together are never fewer than in both apart. So the items may be dealt out
 * into sets far apart in themselves, and what each set changes at the least adds up.
 */
import { farApart, type Pairs } from "./group-pairs.js";
import type { Items } from "./groups.js";

/** The least squares that any grouping into `groups` groups and a still one changes. */
export function leastChanges(items: Items, pairs: Pairs, groups: number): number {
  const sum = (numbers: ArrayLike<number>) =>
    Array.from(numbers).reduce((total, number) => total + number, 0);
  if (groups === 0) return sum(items.still);
  const count = pairs.chosen.length;
  const sizes = [1, 1.25, 1.5, 2, 3, 5].map((share) => Math.ceil(groups * share) + 1);
  const beyond = [...sizes.filter((size) => size < count), count].map((size) => {
    const left = new Set(pairs.chosen.keys());
    let least = 0;
    while (left.size > groups) {
      const set = farApart(pairs, left, size);
      for (const place of set) left.delete(place);
      least += forestOf(pairs, set, groups);
    }
    return least;
  });
  return sum(items.alone) + Math.max(...beyond);
}

/** The squares that a set of items changes at the least beyond those changed alone. */
function forestOf(pairs: Pairs, set: readonly number[], groups: number): number {
  if (set.length <= groups) return 0;
  const largest = set.length - groups + 1;
  const ties = lightestTies(pairs, set).sort((a, b) => a - b);
  const forest = ties.slice(0, set.length - groups).reduce((sum, tie) => sum + tie, 0);
  return Math.ceil((forest * largest) / (2 * (largest - 1)) - 1e-9);
}

/** The ties of the lightest tree over a set of items and the still group, from the still group on. */
function lightestTies({ chosen, added }: Pairs, set: readonly number[]): number[] {
  const count = chosen.length;
  const ties: number[] = [];
  const open = [...set];
  const weight = open.map((place) => added[place * count + place]!);
  while (open.length > 0) {
    let next = 0;
    for (let i = 1; i < open.length; i++) if (weight[i]! < weight[next]!) next = i;
    const place = open[next]!;
    ties.push(weight[next]!);
    open[next] = open.at(-1)!;
    weight[next] = weight.at(-1)!;
    open.pop();
    weight.pop();
    for (let i = 0; i < open.length; i++) weight[i] = Math.min(weight[i]!, added[place * count + open[i]!]!);
  }
  return ties;
}
