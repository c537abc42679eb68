/**
 * Sound drafts as a second hand writes them: section by section and block by block, put together by letters, as in a
 * notebook. Threadings of several sections, borders of any width, orders such as A B A C A, motifs written out twice, two
 * shaft groups; figures grown square by square on paper. Nothing here is shared with the first hand.
 */
import type { UnitDraft } from "@drawcord/units";
import type { Sound } from "./measure.js";

/** Whole numbers below `most` (a linear congruence, multiplier of Numerical Recipes, from memory). */
class Dice {
  #state: bigint;
  constructor(seed: number) {
    this.#state = BigInt(seed) * 2654435761n + 88172645463325252n;
  }
  below(most: number): number {
    this.#state = (this.#state * 1664525n + 1013904223n) & 0xffff_ffff_ffffn;
    return Number(this.#state >> 16n) % most;
  }
  pick<T>(of: readonly T[]): T {
    return of[this.below(of.length)]!;
  }
}

type Sets = readonly (readonly number[])[];

const orders = ["ABA", "ABACA", "AABB", "ABCBA", "AAA", "ABAB", "ABCABC", "AABAA"];

/** Threading sections on shafts from `first` on, as many as `count`: in the ways of the books, and one of her own. */
function section(dice: Dice, first: number, count: number): Sets {
  const up = Array.from({ length: count }, (_, i) => [first + i]);
  switch (dice.below(5)) {
    case 0:
      return up;
    case 1:
      return [...up, ...up.slice(0, -1).toReversed()];
    case 2:
      return up.toReversed();
    case 3:
      // Two steps forth and one back.
      return up.flatMap((unit, i) => (i + 2 < count ? [unit, up[i + 2]!] : [unit]));
    default:
      return [...up, [], ...up.toReversed()];
  }
}

/** A figure grown on paper: an edge on the left and one on the right walk up the page, now and then with a window. */
function block(dice: Dice, first: number, count: number): Sets {
  let left = dice.below(Math.max(1, count - 3));
  let right = Math.min(count - 1, left + 2 + dice.below(4));
  const rows: number[][] = [];
  const height = 5 + dice.below(9);
  const window = dice.below(3) === 0 ? 2 + dice.below(height - 3) : -1;
  for (let row = 0; row < height; row++) {
    const drawn: number[] = [];
    for (let i = left; i <= right; i++) {
      if (row === window && i > left && i < right) continue;
      drawn.push(first + i);
    }
    rows.push(drawn);
    left = Math.max(0, Math.min(count - 3, left + dice.pick([-1, -1, 0, 1, 1, 2])));
    right = Math.max(left + 1, Math.min(count - 1, right + dice.pick([-2, -1, -1, 0, 1, 1])));
  }
  return dice.below(2) === 0 ? rows : [...rows, ...rows.slice(0, -1).toReversed()];
}

const grounds: readonly UnitDraft["ground"][] = [
  {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [
      [1, 4],
      [2, 3],
      [3, 2],
      [4, 1],
    ].map(([raise, sink]) => ({ raise: [raise!], sink: [sink!] })),
  },
  {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [
      [2, 3],
      [4, 1],
      [1, 4],
      [3, 2],
    ].map(([raise, sink]) => ({ raise: [raise!], sink: [sink!] })),
  },
  {
    shafts: 8,
    threading: [1, 2, 3, 4, 5, 6, 7, 8],
    steps: [
      [2, 7],
      [5, 4],
      [8, 1],
      [3, 6],
      [6, 3],
      [1, 8],
      [4, 5],
      [7, 2],
    ].map(([raise, sink]) => ({ raise: [raise!], sink: [sink!] })),
  },
  {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [
      { raise: [1, 3], sink: [2, 4] },
      { raise: [], sink: [], weft: "silk" },
      { raise: [2, 4], sink: [1, 3] },
      { raise: [], sink: [], weft: "silk" },
    ],
  },
];

/** The sound draft of a seed. */
export function sectioned(seed: number): Sound {
  const dice = new Dice(seed);
  const [low, high] = [4 + dice.below(5), 4 + dice.below(5)];
  const sections: Record<string, Sets> = {
    A: section(dice, 1, low),
    B: section(dice, low + 1, high),
    C: section(dice, 1, low + high),
  };
  const blocks: Record<string, Sets> = {
    A: block(dice, 1, low + high),
    B: block(dice, 1, low),
    C: block(dice, low + 1, high),
  };
  const threaded = dice.pick(orders);
  const woven = dice.pick(orders);
  const border = (most: number): Sets => Array.from({ length: dice.below(most) }, () => []);
  const joint = border(3);
  const threading = [
    ...border(6),
    ...[...threaded].flatMap((letter, i) => (i === 0 ? sections[letter]! : [...joint, ...sections[letter]!])),
    ...border(6),
  ];
  const lifts = [...border(5), ...[...woven].flatMap((letter) => blocks[letter]!), ...border(5)];
  const ground = dice.pick(grounds);
  const size = ground.shafts === 8 ? 8 : 4;
  const side = dice.below(2) === 0 ? ground.threading.slice(0, 4) : [1, 1, 2, 2, 1, 1, 2, 2];
  return {
    family: `${threaded} / ${woven}`,
    draft: {
      ground,
      unitEnds: size,
      threading,
      lifts,
      picksPerRow: lifts.map(() => size),
      selvedge: { left: side, right: side.toReversed() },
    },
  };
}
