import type { Items } from "./groups.js";

/** Past this many items, pairs are looked at among as many only. */
const MOST_PAIRED = 1500;

/** What items cost each other. */
export interface Pairs {
  /** The items that were paired: all, or some spread evenly over all. */
  readonly chosen: readonly number[];
  /**
   * `chosen.length` squared: the squares that two of them change beyond those changed alone when they have a group to
   * themselves; on the diagonal, those that one changes beyond when it is never drawn.
   */
  readonly added: Int32Array;
}

/** Every two items of a chart against each other. */
export function pairedItems(items: Items): Pairs {
  const every = Math.max(1, items.count / MOST_PAIRED);
  const count = Math.min(items.count, MOST_PAIRED);
  const chosen = Array.from({ length: count }, (_, i) => Math.floor(i * every));
  const added = new Int32Array(count * count);
  for (let a = 0; a < count; a++) {
    added[a * count + a] = items.still[chosen[a]!]! - items.alone[chosen[a]!]!;
    for (let b = 0; b < a; b++) {
      added[a * count + b] = pairChanges(items, chosen[a]!, chosen[b]!);
      added[b * count + a] = added[a * count + b]!;
    }
  }
  return { chosen, added };
}

function pairChanges(items: Items, a: number, b: number): number {
  const { rows, drawn, columns, alone } = items;
  const both = columns[a]! + columns[b]!;
  const firstA = a * rows;
  const firstB = b * rows;
  let changes = 0;
  for (let row = 0; row < rows; row++) {
    const up = drawn[firstA + row]! + drawn[firstB + row]!;
    changes += up + up < both ? up : both - up;
  }
  return changes - alone[a]! - alone[b]!;
}

/**
 * The first `most` of `places` in such an order that each is as far as can be from those before it and from never being
 * drawn.
 */
export function farApart(pairs: Pairs, places: Iterable<number>, most: number): number[] {
  const { chosen, added } = pairs;
  const count = chosen.length;
  const left = [...places];
  const nearest = left.map((place) => added[place * count + place]!);
  const order: number[] = [];
  while (left.length > 0 && order.length < most) {
    let next = 0;
    for (let i = 1; i < left.length; i++) if (nearest[i]! > nearest[next]!) next = i;
    const place = left[next]!;
    order.push(place);
    left[next] = left.at(-1)!;
    nearest[next] = nearest.at(-1)!;
    left.pop();
    nearest.pop();
    for (let i = 0; i < left.length; i++)
      nearest[i] = Math.min(nearest[i]!, added[place * count + left[i]!]!);
  }
  return order;
}
