/**
 * In what order the pattern shafts hang. How many handles change from row to row is the picture's doing and no order
 * mends it; but handles that are pulled, or let go, together and hang side by side take one grasp of the hand.
 */
import type { ShaftSet } from "@drawcord/ground";
import type { HarnessPlan } from "./chart.js";
import { handleChanges } from "./lift-work.js";

/** An order of the pattern shafts, and what it saves. */
export interface HandleOrder {
  /** The shaft, by its number now, that should hang in each place, the first place first. */
  readonly order: readonly number[];
  /** Grasps in all rows together with the order found. */
  readonly grasps: number;
  /** Grasps with the shafts as they are numbered now. */
  readonly graspsNow: number;
  /** Whether no order takes fewer. */
  readonly proved: boolean;
}

/** Up to this many shafts every order is weighed. */
const MOST_WEIGHED = 12;

/**
 * The order of the shafts 1 to `shafts` in which the handles take fewest grasps: in each row, the groups of neighbours
 * that are pulled and the groups that are let go. Proved up to 12 shafts; past that a good order that no exchange of
 * two stretches betters.
 * @param lifts the shafts drawn in each row, row 1 first
 * @param shafts how many there are, from 1; the highest drawn by default
 * @example handleOrder([[1, 3], [2], [1, 3]]).order // [1, 3, 2]
 */
export function handleOrder(lifts: readonly ShaftSet[], shafts = highest(lifts)): HandleOrder {
  const moves = lifts.flatMap((lift, row) => Object.values(handleChanges(lifts[row - 1] ?? [], lift)));
  const together = Array.from({ length: shafts }, () => new Int32Array(shafts));
  for (const set of moves) {
    for (const a of set) for (const b of set) if (a !== b) together[a - 1]![b - 1]!++;
  }
  const weighed = shafts <= MOST_WEIGHED;
  const found = weighed ? bestPath(together) : goodPath(together);
  const now = Array.from({ length: shafts }, (_, i) => i + 1);
  const order = found.map((place) => place + 1);
  const grasps = graspsOf(moves, order);
  const graspsNow = graspsOf(moves, now);
  return grasps < graspsNow
    ? { order, grasps, graspsNow, proved: weighed }
    : { order: now, grasps: graspsNow, graspsNow, proved: weighed };
}

/**
 * The plan with its shafts hung in another order: the shaft in each place takes the number of the place.
 * @param plan the threading and the lifts as they stand
 * @param order every shaft of the plan once
 * @example renumberedShafts({ threading: [[1], [3]], lifts: [[3]] }, [1, 3, 2]) // { threading: [[1], [2]], lifts: [[2]] }
 */
export function renumberedShafts(plan: HarnessPlan, order: readonly number[]): HarnessPlan {
  const place = new Map(order.map((shaft, i) => [shaft, i + 1]));
  const renumber = (set: ShaftSet) => set.map((shaft) => place.get(shaft) ?? shaft).sort((a, b) => a - b);
  return { threading: plan.threading.map(renumber), lifts: plan.lifts.map(renumber) };
}

function highest(lifts: readonly ShaftSet[]): number {
  return lifts.reduce((most, lift) => Math.max(most, lift.at(-1) ?? 0), 0);
}

/** The groups of neighbours in all moves, with the shafts hung in an order. */
function graspsOf(moves: readonly ShaftSet[], order: readonly number[]): number {
  let grasps = 0;
  for (const set of moves) {
    const moved = new Set(set);
    order.forEach((shaft, i) => {
      if (moved.has(shaft) && !moved.has(order[i - 1]!)) grasps++;
    });
  }
  return grasps;
}

/** The path over all places whose neighbours weigh most together, by weighing every set of places and its last one. */
function bestPath(weights: readonly Int32Array[]): number[] {
  const count = weights.length;
  const best = new Int32Array(count << count).fill(-1);
  const from = new Int8Array(count << count);
  for (let place = 0; place < count; place++) best[(1 << place) * count + place] = 0;
  for (let set = 1; set < 1 << count; set++) {
    for (let last = 0; last < count; last++) {
      const weight = best[set * count + last]!;
      if (weight < 0) continue;
      for (let next = 0; next < count; next++) {
        if ((set >>> next) & 1) continue;
        const at = (set | (1 << next)) * count + next;
        const longer = weight + weights[last]![next]!;
        if (longer <= best[at]!) continue;
        best[at] = longer;
        from[at] = last;
      }
    }
  }
  let set = 2 ** count - 1;
  let last = 0;
  for (let place = 1; place < count; place++) {
    if (best[set * count + place]! > best[set * count + last]!) last = place;
  }
  const path: number[] = [];
  for (let left = count; left > 0; left--) {
    path.push(last);
    const before = from[set * count + last]!;
    set &= ~(1 << last);
    last = before;
  }
  return path[0]! > path.at(-1)! ? path.reverse() : path;
}

/** A path that begins as the heaviest neighbours come, then has stretches turned round while that helps. */
function goodPath(weights: readonly Int32Array[]): number[] {
  const count = weights.length;
  const path = [0];
  const left = new Set(Array.from({ length: count - 1 }, (_, i) => i + 1));
  while (left.size > 0) {
    const last = path.at(-1)!;
    let next = -1;
    for (const place of left) if (next < 0 || weights[last]![place]! > weights[last]![next]!) next = place;
    path.push(next);
    left.delete(next);
  }
  const weight = (a: number | undefined, b: number | undefined) =>
    a === undefined || b === undefined ? 0 : weights[a]![b]!;
  for (let better = true; better; ) {
    better = false;
    for (let start = 0; start < count; start++) {
      for (let end = start + 1; end < count; end++) {
        const before = weight(path[start - 1], path[start]) + weight(path[end], path[end + 1]);
        const after = weight(path[start - 1], path[end]) + weight(path[start], path[end + 1]);
        if (after <= before) continue;
        path.splice(start, end - start + 1, ...path.slice(start, end + 1).reverse());
        better = true;
      }
    }
  }
  return path;
}
