/**
 * Sound drafts as a third hand makes them: figures drawn with compass and ruler on squared paper (stars, lozenges, letters,
 * leaves on a stem, chequers, rings, a zigzag, a fret), set one above the other with bars between, in borders of any width.
 * Shares nothing with the other two hands.
 */
import type { UnitDraft } from "@drawcord/units";
import type { Sound } from "./measure.js";

/** Whole numbers below `most`, by xorshift (G. Marsaglia, "Xorshift RNGs", J. Stat. Software 8, 2003, from memory). */
function lots(seed: number): (most: number) => number {
  let state = (seed * 2246822519 + 374761393) >>> 0 || 1;
  return (most) => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % most;
  };
}

/** Whether a square of the paper is inked, by its column and row from 0. */
type Ink = (x: number, y: number) => boolean;

interface Figure {
  readonly name: string;
  readonly high: number;
  readonly ink: Ink;
}

const glyphs: Readonly<Record<string, readonly string[]>> = {
  A: [".##.", "#..#", "#..#", "####", "#..#", "#..#", "#..#"],
  E: ["####", "#...", "#...", "###.", "#...", "#...", "####"],
  L: ["#...", "#...", "#...", "#...", "#...", "#...", "####"],
  N: ["#..#", "##.#", "##.#", "#.##", "#.##", "#..#", "#..#"],
  O: [".##.", "#..#", "#..#", "#..#", "#..#", "#..#", ".##."],
  P: ["###.", "#..#", "#..#", "###.", "#...", "#...", "#..."],
  T: ["####", ".##.", ".##.", ".##.", ".##.", ".##.", ".##."],
};

/** Figures on paper so many squares wide. */
const figures: readonly ((wide: number, lot: (most: number) => number) => Figure)[] = [
  (wide, lot) => {
    const [half, hollow] = [(wide - 1) / 2, lot(2) === 0 ? 2 + lot(2) : -1];
    const far = (x: number, y: number) => Math.abs(x - half) + Math.abs(y - half);
    return {
      name: "lozenge",
      high: wide,
      ink: (x, y) => far(x, y) <= half && (hollow < 0 || far(x, y) > hollow),
    };
  },
  (wide) => {
    const half = (wide - 1) / 2;
    return {
      name: "star",
      high: wide,
      ink: (x, y) => {
        const [dx, dy] = [Math.abs(x - half), Math.abs(y - half)];
        return dx + dy <= half * 0.75 || dx < 1 || dy < 1 || (Math.abs(dx - dy) < 0.6 && dx < half * 0.8);
      },
    };
  },
  (wide, lot) => {
    const letters = Object.keys(glyphs);
    const text = Array.from(
      { length: Math.max(1, Math.floor((wide + 1) / 5)) },
      () => letters[lot(letters.length)]!,
    );
    const thick = 1 + lot(2);
    return {
      name: "letters",
      high: 7 * thick,
      ink: (x, y) => {
        const glyph = glyphs[text[Math.floor(x / 5)] ?? ""];
        return glyph?.[6 - Math.floor(y / thick)]?.[x % 5] === "#";
      },
    };
  },
  (wide, lot) => {
    const [stem, apart] = [Math.floor(wide / 2), 5 + lot(3)];
    return {
      name: "leaves",
      high: apart * (2 + lot(2)) + 3,
      ink: (x, y) => {
        if (x === stem) return true;
        const right = x > stem;
        const [dx, at] = [Math.abs(x - stem), (y + (right ? 0 : Math.floor(apart / 2))) % apart];
        const long = Math.min(stem, wide - 1 - stem);
        return dx <= long && at >= dx / 2 && at <= dx / 2 + Math.max(0, 2 - Math.abs(dx - long / 2) / 1.5);
      },
    };
  },
  (_, lot) => {
    const side = 1 + lot(3);
    return {
      name: "chequers",
      high: side * (3 + lot(4)),
      ink: (x, y) => (Math.floor(x / side) + Math.floor(y / side)) % 2 === 0,
    };
  },
  (wide, lot) => {
    const [half, every] = [(wide - 1) / 2, 3 + lot(2)];
    const round = lot(2) === 0;
    return {
      name: "rings",
      high: wide,
      ink: (x, y) => {
        const [dx, dy] = [x - half, y - half];
        const far = round ? Math.hypot(dx, dy) : Math.max(Math.abs(dx), Math.abs(dy));
        return far <= half && Math.round(far) % every < every - 1 && far > 0.8;
      },
    };
  },
  (wide, lot) => {
    const [turn, thick] = [4 + lot(5), 1 + lot(3)];
    return {
      name: "zigzag",
      high: 2 * turn,
      ink: (x, y) => {
        const at = turn - Math.abs((y % (2 * turn)) - turn);
        return (x - at + 10 * wide) % Math.max(thick + 3, Math.floor(wide / 2)) < thick;
      },
    };
  },
  (wide) => {
    const fret = ["######", "#.....", "#.####", "#.#..#", "#.##.#", "#....#", "######"];
    return { name: "fret", high: fret.length, ink: (x, y) => fret[6 - y]![x % 6] === "#" || x === wide };
  },
];

type Sets = readonly (readonly number[])[];

/** A figure as lifts on shafts from `first` on; the bottom line first. */
function drawn({ high, ink }: Figure, first: number, wide: number): Sets {
  return Array.from({ length: high }, (_, y) =>
    Array.from({ length: wide }, (_, x) => x).flatMap((x) => (ink(x, y) ? [first + x] : [])),
  );
}

const again = (set: readonly number[], times: number): Sets => Array.from({ length: times }, () => set);

const mirroredSatin = (raise: readonly number[]): UnitDraft["ground"] => ({
  shafts: raise.length,
  threading: raise.map((_, end) => end + 1),
  steps: raise.map((shaft) => ({ raise: [shaft], sink: [raise.length + 1 - shaft] })),
});

const grounds: readonly { readonly ground: UnitDraft["ground"]; readonly ends: number }[] = [
  { ground: mirroredSatin([1, 3, 2, 4]), ends: 4 },
  { ground: mirroredSatin([3, 6, 1, 4, 7, 2, 5, 8]), ends: 8 },
  {
    ground: {
      shafts: 5,
      threading: [1, 2, 3, 4, 5],
      steps: [1, 3, 5, 2, 4].map((shaft) => ({ raise: [shaft], sink: [(shaft % 5) + 1] })),
    },
    ends: 5,
  },
  {
    ground: {
      shafts: 4,
      threading: [1, 2, 3, 4],
      steps: [
        { raise: [1, 3], sink: [2, 4] },
        { raise: [], sink: [], weft: "wool" },
        { raise: [2, 4], sink: [1, 3] },
        { raise: [], sink: [], weft: "wool" },
      ],
    },
    ends: 2,
  },
];

/** How the figures are put one above the other, and how the shafts go over the warp. */
const uprights = ["A", "AA", "ABA", "ABACA", "AbA", "ABAB", "AAbbA", "Aa"];
const across = [
  "straight",
  "pointed",
  "point and point",
  "twice with a bar",
  "mirrored groups",
  "groups in order",
];

function threaded(way: string, wide: number, lot: (most: number) => number): Sets {
  const up = Array.from({ length: wide }, (_, i) => [i + 1]);
  const down = up.toReversed();
  const bar = again([], 1 + lot(4));
  const cut = 2 + lot(wide - 3);
  const [low, high] = [up.slice(0, cut), up.slice(cut)];
  switch (way) {
    case "straight":
      return Array.from({ length: 1 + lot(3) }, () => up).flat();
    case "pointed":
      return [...up, ...down.slice(1)];
    case "point and point":
      return [...up, ...down.slice(1), ...up.slice(1), ...down.slice(1)];
    case "twice with a bar":
      return [...up, ...bar, ...up];
    case "mirrored groups":
      return [...low, ...bar, ...high, ...high.toReversed().slice(1), ...bar, ...low.toReversed()];
    default:
      return [...low, ...high, ...low, ...high, ...low];
  }
}

/** The sound draft of a seed. */
export function figured(seed: number): Sound {
  const lot = lots(seed);
  for (let i = 0; i < 5; i++) lot(2);
  const wide = 9 + lot(10);
  const [first, second, third] = [0, 1, 2].map(() => figures[lot(figures.length)]!(wide, lot));
  const blocks: Readonly<Record<string, Sets>> = {
    A: drawn(first!, 1, wide),
    B: drawn(second!, 1, wide),
    C: drawn(third!, 1, wide),
  };
  const upright = uprights[lot(uprights.length)]!;
  const bar = [
    ...again([], 1 + lot(2)),
    ...(lot(3) === 0 ? [Array.from({ length: wide }, (_, i) => i + 1)] : []),
  ];
  const lifts = [
    ...again([], lot(5)),
    ...[...upright].flatMap((letter, i) => {
      const block = blocks[letter.toUpperCase()]!;
      return [...(i === 0 ? [] : bar), ...(letter === letter.toUpperCase() ? block : block.toReversed())];
    }),
    ...again([], lot(5)),
  ];
  const way = across[lot(across.length)]!;
  const threading = [...again([], lot(7)), ...threaded(way, wide, lot), ...again([], lot(7))];
  const { ends, ground } = grounds[lot(grounds.length)]!;
  const side = [[1, 2, 1, 2, 1, 2], [1, 1, 2, 2, 1, 1, 2, 2], ground.threading.slice(0, 4)][lot(3)]!;
  const picks = [ends, 2 * ends][lot(2)]!;
  return {
    family: `${first!.name} ${upright}, ${way}`,
    draft: {
      ground,
      unitEnds: ends,
      threading,
      lifts,
      picksPerRow: lifts.map(() => picks),
      selvedge: { left: side, right: lot(2) === 0 ? side : side.toReversed() },
    },
  };
}
