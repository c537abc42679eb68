/**
 * The best grouping, proved: items are put into groups one after the other, and a way is left as soon as it cannot beat
 * the best one known. Squares that change in two sets of items together are never fewer than in both apart, so what the
 * items still to come change at the least is the best grouping of those alone; that is found first, from the last
 * item backwards, and each search leans on the one before.
 */
import type { Watched } from "@drawcord/base";
import { leastChanges } from "./group-bound.js";
import { farApart, type Pairs } from "./group-pairs.js";
import { changesOf, changesWith, emptyGroup, type Grouping, type Items, moveItem, STILL } from "./groups.js";

/** Squares looked at before the search is given up. */
const MOST_LOOKS = 5e7;

/** Squares looked at before the signal is looked at again. */
const LOOKS_UNSEEN = 2e5;

/** A grouping and how good any grouping can be. */
export interface Grouped {
  readonly grouping: Grouping;
  readonly changes: number;
  /** No grouping changes fewer squares. The grouping is the best when both are the same. */
  readonly atLeast: number;
}

/** More items than this are not searched. */
const MOST_SEARCHED = 64;

/**
 * The best grouping into at most `groups` groups and the still one, as far as it can be proved.
 * @param known a grouping to begin with
 * @param watched told how many of the items are placed for good; the search ends where its signal says so
 */
export function searchedGroups(
  items: Items,
  pairs: Pairs,
  groups: number,
  known: Grouping,
  watched: Watched,
): Grouped {
  const start = {
    grouping: known,
    changes: changesOf(items, known),
    atLeast: leastChanges(items, pairs, groups),
  };
  if (start.changes === start.atLeast || items.count > MOST_SEARCHED) return start;
  return search(items, farApart(pairs, items.alone.keys(), items.count), groups, start, watched);
}

/** Searches in the given order of the items: far apart first, so that the hard choices come first. */
function search(
  items: Items,
  order: readonly number[],
  groups: number,
  start: Grouped,
  { progress, signal }: Watched,
): Grouped {
  const { count, rows, alone, still } = items;
  // least[i]: squares that the items from place i of the order on change at the least; apart[i]: with a group each.
  const least = new Int32Array(count + 1);
  const apart = new Int32Array(count + 1);
  for (let i = count - 1; i >= 0; i--) apart[i] = apart[i + 1]! + alone[order[i]!]!;

  const made = Array.from({ length: groups }, () => emptyGroup(rows));
  const placed = new Int32Array(count);
  let grouping = start.grouping;
  let best = 0;
  let looks = 0;
  let nextLook = LOOKS_UNSEEN;

  const place = (i: number, used: number, changes: number, whole: boolean): void => {
    if (looks > nextLook) {
      nextLook = looks + LOOKS_UNSEEN;
      if (signal?.aborted === true) looks = Number.POSITIVE_INFINITY;
    }
    if (changes + least[i]! >= best || looks > MOST_LOOKS) return;
    if (count - i <= groups - used) {
      if (changes + apart[i]! >= best) return;
      best = changes + apart[i]!;
      if (whole) grouping = Int32Array.from(placed);
      for (let k = i; whole && k < count; k++) grouping[order[k]!] = used + k - i;
      return;
    }
    const item = order[i]!;
    const ways = [{ at: STILL, added: still[item]! }];
    if (used < groups) ways.push({ at: used, added: alone[item]! });
    for (let at = 0; at < used; at++)
      ways.push({ at, added: changesWith(made[at]!, items, item, 1) - made[at]!.changes });
    looks += (used + 1) * rows;
    for (const { at, added } of ways.sort((a, b) => a.added - b.added)) {
      placed[item] = at;
      const group = made[at];
      const before = group?.changes ?? 0;
      if (group !== undefined) moveItem(group, items, item, 1, before + added);
      place(i + 1, Math.max(used, at + 1), changes + added, whole);
      if (group !== undefined) moveItem(group, items, item, -1, before);
    }
  };

  for (let from = count - 1; from >= 0; from--) {
    progress?.(count - 1 - from, count);
    if (signal?.aborted === true) looks = Number.POSITIVE_INFINITY;
    const item = order[from]!;
    least[from] = least[from + 1]! + alone[item]!;
    best = from === 0 ? start.changes : least[from + 1]! + still[item]!;
    const floor = least[from]!;
    if (best > floor) place(from, 0, 0, from === 0);
    if (looks > MOST_LOOKS) {
      const atLeast = Math.max(start.atLeast, apart[0]! - apart[from]! + floor);
      return { grouping, changes: changesOf(items, grouping), atLeast };
    }
    least[from] = best;
  }
  return { grouping, changes: best, atLeast: best };
}
