/** A good grouping, quickly: begin with a group for each item, merge what costs least, then move single items. */
import type { Pairs } from "./group-pairs.js";
import { changesWith, emptyGroup, type Group, type Grouping, type Items, moveItem, STILL } from "./groups.js";

/** Rounds of moving every item once; they end sooner when nothing gets better. */
const MOST_ROUNDS = 50;

/** A grouping into at most `groups` groups and the still one. */
export function mergedGroups(items: Items, pairs: Pairs, groups: number): Grouping {
  const grouping = mergedPiles(items, pairs, groups);
  moveItems(items, grouping, groups);
  return grouping;
}

/**
 * Merges the two piles that add fewest changed squares, or lets the one pile be still that adds fewer, until no more
 * than `groups` are left. Items that were not paired are still.
 */
function mergedPiles(items: Items, pairs: Pairs, groups: number): Grouping {
  const { chosen } = pairs;
  const count = chosen.length;
  const piles = chosen.map((item) => {
    const group = emptyGroup(items.rows);
    moveItem(group, items, item, 1, items.alone[item]!);
    return { group, members: [item] };
  });
  const added = pairs.added.slice();
  const open = new Set(piles.keys());
  const best = new Int32Array(count);
  const findBest = (a: number) => {
    best[a] = a;
    for (const b of open) if (added[a * count + b]! < added[a * count + best[a]!]!) best[a] = b;
  };
  for (const a of open) findBest(a);

  while (open.size > groups) {
    let kept = -1;
    for (const a of open) if (kept < 0 || cost(a) < cost(kept)) kept = a;
    const gone = best[kept]!;
    open.delete(gone);
    if (gone !== kept) {
      merge(piles[kept]!.group, piles[gone]!.group);
      piles[kept]!.members.push(...piles[gone]!.members);
      for (const b of open) {
        const merged =
          b === kept ? stillChanges(piles[b]!.group) : mergedChanges(piles[kept]!.group, piles[b]!.group);
        const apart = piles[kept]!.group.changes + (b === kept ? 0 : piles[b]!.group.changes);
        added[kept * count + b] = merged - apart;
        added[b * count + kept] = merged - apart;
      }
    }
    for (const a of open) {
      if (a === kept || best[a] === kept || best[a] === gone) findBest(a);
      else if (added[a * count + kept]! < cost(a) && open.has(kept)) best[a] = kept;
    }
  }
  function cost(a: number): number {
    return added[a * count + best[a]!]!;
  }

  const grouping = new Int32Array(items.count).fill(STILL);
  [...open].forEach((pile, group) => {
    for (const item of piles[pile]!.members) grouping[item] = group;
  });
  return grouping;
}

function mergedChanges(a: Group, b: Group): number {
  const columns = a.columns + b.columns;
  let changes = 0;
  for (let row = 0; row < a.drawn.length; row++) {
    const up = a.drawn[row]! + b.drawn[row]!;
    changes += up + up < columns ? up : columns - up;
  }
  return changes;
}

function stillChanges(group: Group): number {
  return group.drawn.reduce((sum, drawn) => sum + drawn, 0);
}

function merge(into: Group, from: Group): void {
  into.changes = mergedChanges(into, from);
  into.columns += from.columns;
  for (let row = 0; row < into.drawn.length; row++) into.drawn[row]! += from.drawn[row]!;
}

/** Moves items one by one to the group where they change fewest squares, in `grouping` itself, while it helps. */
function moveItems(items: Items, grouping: Grouping, groups: number): void {
  const all = Array.from({ length: groups }, () => emptyGroup(items.rows));
  grouping.forEach((at, item) => {
    if (at !== STILL) moveItem(all[at]!, items, item, 1, changesWith(all[at]!, items, item, 1));
  });
  for (let round = 0, better = true; better && round < MOST_ROUNDS; round++) {
    better = false;
    for (let item = 0; item < items.count; item++) {
      const at = grouping[item]!;
      if (at !== STILL) moveItem(all[at]!, items, item, -1, changesWith(all[at]!, items, item, -1));
      let best = STILL;
      let least = items.still[item]!;
      let before = least;
      let after = 0;
      for (let g = 0; g < groups; g++) {
        const changes = changesWith(all[g]!, items, item, 1);
        const added = changes - all[g]!.changes;
        if (g === at) before = added;
        if (added > least || (added === least && best !== STILL)) continue;
        best = g;
        least = added;
        after = changes;
      }
      const to = least < before ? best : at;
      better ||= to !== at;
      if (to !== STILL)
        moveItem(all[to]!, items, item, 1, to === best ? after : changesWith(all[to]!, items, item, 1));
      grouping[item] = to;
    }
  }
}
