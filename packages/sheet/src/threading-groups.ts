import type { UnitShafts } from "@drawcord/units";

/** Neighbouring units that are threaded in one go, in the order of threading. */
export interface ThreadingGroup {
  /** Unit numbers from 1 in the order of threading: read right to left, the first is the greater. */
  readonly first: number;
  readonly last: number;
  /** Shafts in the order of threading: `X`, `7`, `1-8`, `8-1`, `3+9`. */
  readonly shafts: string;
  readonly units: number;
  /** Ends in each unit of the group. */
  readonly endsAUnit: number;
}

/** A beginner counts no further without a tick. */
const MOST = 12;

/**
 * A threading in counted groups: static units together, runs up and runs down, units on one shaft together.
 * @param unitEnds ends of each unit
 * @param fromRight whether the last unit is threaded first, as from the weaver's bench
 * @example threadingGroups([[], [1], [2], [3]], [4, 4, 4, 4], true).map((group) => group.shafts) // ["3-1", "X"]
 */
export function threadingGroups(
  threading: readonly UnitShafts[],
  unitEnds: readonly number[],
  fromRight: boolean,
): ThreadingGroup[] {
  const order = threading.map((_, unit) => (fromRight ? threading.length - 1 - unit : unit));
  const groups: ThreadingGroup[] = [];
  for (let i = 0; i < order.length; ) {
    let step: number | undefined;
    let j = i + 1;
    for (; j < order.length && j - i < MOST; j++) {
      if (unitEnds[order[j]!] !== unitEnds[order[i]!]) break;
      const by = stepBetween(threading[order[j - 1]!]!, threading[order[j]!]!);
      if (by === undefined || (step !== undefined && by !== step)) break;
      step = by;
    }
    groups.push({
      first: order[i]! + 1,
      last: order[j - 1]! + 1,
      shafts: written(threading[order[i]!]!, threading[order[j - 1]!]!),
      units: j - i,
      endsAUnit: unitEnds[order[i]!]!,
    });
    i = j;
  }
  return groups;
}

/** 0 for the same shafts, 1 or -1 for the next or the last one; undefined where a group must end. */
function stepBetween(from: UnitShafts, to: UnitShafts): number | undefined {
  if (from.length === to.length && from.every((shaft, i) => shaft === to[i])) return 0;
  if (from.length !== 1 || to.length !== 1) return undefined;
  const by = to[0]! - from[0]!;
  return Math.abs(by) === 1 ? by : undefined;
}

function written(first: UnitShafts, last: UnitShafts): string {
  const one = first.length === 0 ? "X" : first.join("+");
  return first.length === 1 && last.length === 1 && first[0] !== last[0] ? `${one}-${last[0]}` : one;
}
