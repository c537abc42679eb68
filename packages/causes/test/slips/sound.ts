/** Sound drafts as one hand plans them: a motif on so many shafts, threaded and woven in the ways of the trade. */
import type { UnitDraft } from "@drawcord/units";

/** Numbers from 0 to below 1, the same for the same seed (mulberry32, from memory). */
export type Toss = () => number;

export function tosser(seed: number): Toss {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from the least to the most. */
export function whole(toss: Toss, least: number, most: number): number {
  return least + Math.floor(toss() * (most - least + 1));
}

type Lifts = readonly (readonly number[])[];
type Threading = readonly (readonly number[])[];

export const families = [
  "mirrored as a whole",
  "pointed, the motif directed",
  "straight repeats",
  "a one-off picture",
  "mirrored, borders unequal",
  "copies written out",
] as const;
export type Family = (typeof families)[number];

export const grounds = ["plain", "broken twill", "satin", "pattern weft"] as const;
export type GroundName = (typeof grounds)[number];

function groundOf(name: GroundName): UnitDraft["ground"] {
  const counted = (raise: readonly number[], sink: readonly number[]) => ({
    shafts: raise.length,
    threading: raise.map((_, end) => end + 1),
    steps: raise.map((shaft, step) => ({ raise: [shaft], sink: [sink[step]!] })),
  });
  switch (name) {
    case "plain":
      return {
        shafts: 2,
        threading: [1, 2],
        steps: [
          { raise: [1], sink: [] },
          { raise: [2], sink: [] },
        ],
      };
    case "broken twill":
      return counted([1, 3, 2, 4], [4, 2, 3, 1]);
    case "satin":
      return counted([2, 5, 8, 3, 6, 1, 4, 7], [7, 4, 1, 6, 3, 8, 5, 2]);
    case "pattern weft":
      return {
        shafts: 2,
        threading: [1, 2],
        steps: [
          { raise: [1], sink: [2] },
          { raise: [], sink: [], weft: "gold" },
          { raise: [2], sink: [1] },
          { raise: [], sink: [], weft: "gold" },
        ],
      };
  }
}

/** A body that swells and sways, with a gap in it and a thread beside it: outlines go by a shaft or two from row to row. */
function motif(toss: Toss, shafts: number, rows: number): Lifts {
  const [a, b, c, d] = [toss() * 6, toss() * 6, 0.25 + toss() * 0.35, 0.2 + toss() * 0.4];
  const thread = toss() < 0.4 ? whole(toss, 1, shafts) : 0;
  const gap = toss() < 0.6 ? whole(toss, 2, Math.max(2, rows - 4)) : -9;
  return Array.from({ length: rows }, (_, row) => {
    const middle = shafts * (0.5 + 0.22 * Math.sin(a + row * c));
    const half = shafts * (0.2 + 0.16 * Math.sin(b + row * d));
    return Array.from({ length: shafts }, (_, i) => i + 1).filter((shaft) => {
      if (row - gap >= 0 && row - gap < 3 && Math.abs(shaft - middle) < half / 3) return false;
      return Math.abs(shaft - middle) <= half || (shaft === thread && row < rows / 2);
    });
  });
}

const straight = (shafts: number): Threading => Array.from({ length: shafts }, (_, i) => [i + 1]);
const point = (shafts: number): Threading => [...straight(shafts), ...straight(shafts).toReversed().slice(1)];
const times = <T>(what: readonly T[], count: number): readonly T[] =>
  Array.from({ length: count }, () => what).flat();
const still = (count: number): Threading => Array.from({ length: count }, () => []);

interface Planned {
  readonly threading: Threading;
  readonly lifts: Lifts;
}

function plan(family: Family, toss: Toss): Planned {
  const shafts = whole(toss, 7, 14);
  const rows = whole(toss, 9, 20);
  const half = motif(toss, shafts, rows);
  const whole_ = [...half, ...half.toReversed().slice(1)];
  const border = still(whole(toss, 1, 4));
  const edge: Lifts = times([[]], whole(toss, 1, 3));
  switch (family) {
    case "mirrored as a whole":
      return {
        threading: [...border, ...point(shafts), ...border],
        lifts: [...edge, ...whole_, ...edge],
      };
    case "pointed, the motif directed":
      return {
        threading: [...border, [1], ...times(point(shafts).slice(1), whole(toss, 1, 3)), ...border],
        lifts: [...edge, ...times(half, whole(toss, 2, 3)), ...edge],
      };
    case "straight repeats":
      return {
        threading: [...border, ...times(straight(shafts), whole(toss, 3, 5)), ...border],
        lifts: [...edge, ...times(half, whole(toss, 2, 4)), ...edge],
      };
    case "a one-off picture":
      return {
        threading: straight(shafts * 2),
        lifts: motif(toss, shafts * 2, rows * 2),
      };
    case "mirrored, borders unequal":
      return {
        threading: [...border, ...point(shafts), ...still(whole(toss, 5, 8))],
        lifts: [...edge, ...whole_, ...times([[]], whole(toss, 4, 7))],
      };
    case "copies written out": {
      const other = motif(toss, shafts, whole(toss, 5, 9));
      return {
        threading: [...border, ...straight(shafts), ...still(2), ...straight(shafts), ...border],
        lifts: [...edge, ...half, ...other, ...half, ...edge],
      };
    }
  }
}

/** A sound draft of a family on a ground, with selvedges. */
export function soundDraft(family: Family, name: GroundName, toss: Toss): UnitDraft {
  const ground = groundOf(name);
  const { lifts, threading } = plan(family, toss);
  const ends = name === "satin" ? 8 : 4;
  const own = ground.threading.length < 4 ? times(ground.threading, 3) : ground.threading;
  const side = own.slice(-whole(toss, 4, own.length));
  const picks = ends;
  return {
    ground,
    unitEnds: ends,
    threading,
    lifts,
    picksPerRow: Array.from({ length: lifts.length }, () => picks),
    selvedge: { left: side, right: own.slice(0, side.length) },
  };
}
