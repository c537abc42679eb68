import { type BitGrid, toBooleans } from "@drawcord/grid";
import { leastRepeat } from "./repeat.js";

/**
 * Whether a weave is isonemal: every thread, warp or weft, can be carried onto every other by moving, turning, mirroring
 * or turning over the whole cloth so that it falls on itself.
 * @param drawdown whole repeats
 * Source: B. Gruenbaum and G. C. Shephard, Satins and twills, Mathematics Magazine 53 (1980), pp. 139-161.
 * @example isIsonemal(fromText(".#\n#.")) // true
 */
export function isIsonemal(drawdown: BitGrid): boolean {
  const repeat = leastRepeat(drawdown);
  // Only a square repeat can be turned so that warp falls on weft.
  const n = repeat.rows;
  if (n === 0 || n !== repeat.columns) return false;
  const cells = toBooleans(repeat);
  const threads = joined(2 * n);
  for (const carry of carries(n)) {
    for (let right = 0; right < n; right++) {
      for (let up = 0; up < n; up++) {
        if (!fallsOnItself(cells, carry, right, up)) continue;
        for (let i = 0; i < n; i++) {
          // The end through (0, i) and the pick through (i, 0), and where they come to lie.
          const end = carry.swaps ? n + ((carry.pick(0, i) + up) % n) : (carry.end(0, i) + right) % n;
          const pick = carry.swaps ? (carry.end(i, 0) + right) % n : n + ((carry.pick(i, 0) + up) % n);
          threads.join(i, end);
          threads.join(n + i, pick);
        }
      }
    }
  }
  return threads.allOne();
}

/** One way to turn or mirror a square of n x n; whether it lays warps on wefts. */
interface Carry {
  readonly swaps: boolean;
  readonly pick: (pick: number, end: number) => number;
  readonly end: (pick: number, end: number) => number;
}

/** The eight ways to lay a square on itself. */
function carries(n: number): Carry[] {
  const keep = (i: number) => i;
  const flip = (i: number) => n - 1 - i;
  return [keep, flip].flatMap((first) =>
    [keep, flip].flatMap((second): Carry[] => [
      { swaps: false, pick: (pick) => first(pick), end: (_, end) => second(end) },
      { swaps: true, pick: (_, end) => first(end), end: (pick) => second(pick) },
    ]),
  );
}

/** Whether the carried cloth is the cloth, or the cloth with raised and lowered exchanged: turned over, the same. */
function fallsOnItself(
  cells: readonly (readonly boolean[])[],
  carry: Carry,
  right: number,
  up: number,
): boolean {
  const n = cells.length;
  let exchanged: boolean | undefined;
  for (let pick = 0; pick < n; pick++) {
    for (let end = 0; end < n; end++) {
      const there = cells[(carry.pick(pick, end) + up) % n]![(carry.end(pick, end) + right) % n];
      const differs = there !== cells[pick]![end];
      exchanged ??= differs;
      if (differs !== exchanged) return false;
    }
  }
  return true;
}

/** Threads in groups that are joined two by two. */
function joined(count: number) {
  const group = Array.from({ length: count }, (_, thread) => thread);
  const rootOf = (thread: number): number => {
    let root = thread;
    while (group[root] !== root) root = group[root]!;
    return root;
  };
  return {
    join: (a: number, b: number) => {
      group[rootOf(a)] = rootOf(b);
    },
    allOne: () => group.every((_, thread) => rootOf(thread) === rootOf(0)),
  };
}
