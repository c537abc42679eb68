/**
 * The borders of a figure that lie open, one by one. A border is a straight line as a weaver sees it: as far as drawn and
 * undrawn meet between the same two ends, or between the same two picks, with the drawn ones on one side. Each weft is
 * judged within its own picks, and picks on which the ground moves every shaft are left out: there no figure can show.
 */
import { BitGrid, onesIn } from "@drawcord/grid";
import type { Cloth, Figure } from "../cloth.js";
import { acrossPairs, sidePairs } from "./borders.js";
import { eachRun } from "./runs.js";

/** Which edge of the drawn area a border is; the first pick is the lowest. */
type BorderSide = "left" | "right" | "lower" | "upper";

/** A border with more than the allowed share of open pairs; places from 0, with the last. */
export interface OpenBorder {
  readonly side: BorderSide;
  readonly ends: readonly [first: number, last: number];
  readonly picks: readonly [first: number, last: number];
  readonly open: number;
  /** All its pairs of neighbouring interlacements. */
  readonly pairs: number;
}

/** The left and right edges of drawn areas with more than `allowed` percent open; those at a seam are told as far as the seam. */
export function openSides(cloth: Cloth, { drawn, side }: Figure, allowed: number): OpenBorder[] {
  const borders: OpenBorder[] = [];
  if (side.open === 0) return borders;
  const { grid, joined } = cloth.weft;
  const { stride, columns } = grid;
  const picks = picksWithSay(cloth);
  // For each end, of the border between it and the next: the place in `picks` where it began, and its open pairs so far.
  const began = new Int32Array(columns);
  const open = new Int32Array(columns);
  // Of the pick before and of this one: a 1 at each end that has such a border beside it.
  let before = { left: new Uint32Array(stride), right: new Uint32Array(stride) };
  let now = { left: new Uint32Array(stride), right: new Uint32Array(stride) };
  for (let i = 0; i <= picks.length; i++) {
    now.left.fill(0);
    now.right.fill(0);
    const found: [column: number, open: number][] = [];
    if (i < picks.length) {
      const pick = picks[i]!;
      sidePairs(grid, drawn, pick, joined, (column, border, cut) => {
        const own = drawn.words[pick * stride + (column >>> 5)]!;
        now.right[column >>> 5] = border & own;
        now.left[column >>> 5] = border & ~own;
        found.push([column, border & ~cut]);
      });
    }
    for (const edge of ["left", "right"] as const) {
      for (let word = 0; word < stride; word++) {
        eachBit(before[edge][word]! & ~now[edge][word]!, (bit) => {
          const end = word * 32 + bit;
          const pairs = i - began[end]!;
          if (100 * open[end]! <= allowed * pairs) return;
          const last = Math.min(end + 1, columns - 1);
          borders.push({
            side: edge,
            ends: [end, last],
            picks: [picks[began[end]!]!, picks[i - 1]!],
            open: open[end]!,
            pairs,
          });
        });
      }
    }
    for (const edge of ["left", "right"] as const) {
      for (let word = 0; word < stride; word++) {
        eachBit(now[edge][word]! & ~before[edge][word]!, (bit) => {
          began[word * 32 + bit] = i;
          open[word * 32 + bit] = 0;
        });
      }
    }
    for (const [column, openHere] of found) eachBit(openHere, (bit) => open[column + bit]!++);
    [before, now] = [now, before];
  }
  return borders;
}

/** The lower and upper edges of drawn areas with more than `allowed` percent open. */
export function openAcross(cloth: Cloth, { drawn, rowKinds, across }: Figure, allowed: number): OpenBorder[] {
  const borders: OpenBorder[] = [];
  const { weftOfPick, wefts, warp, weft, layout } = cloth;
  const { columns, stride } = weft.grid;
  const { kindOf } = rowKinds;
  const drawnAs = (pick: number) => kindOf[layout === undefined ? pick : layout.rowOfPick[pick]!];
  const picks = picksWithSay(cloth);
  // Then the picks that meet here are those of the tally, in which none is open.
  if (across.open === 0 && wefts.length === 1 && picks.length === weft.count) return borders;
  wefts.forEach((_, index) => {
    const own = wefts.length === 1 ? picks : picks.filter((pick) => weftOfPick[pick] === index);
    own.forEach((pick, i) => {
      if (i === own.length - 1 && !warp.joined) return;
      const other = own[(i + 1) % own.length]!;
      if (drawnAs(pick) === drawnAs(other)) return;
      const open = new Uint32Array(stride);
      const lower = new Uint32Array(stride);
      const upper = new Uint32Array(stride);
      let anyOpen = 0;
      acrossPairs(weft.grid, drawn, pick, other, (column, border, cut) => {
        const word = column >>> 5;
        const below = drawn.words[pick * stride + word]!;
        open[word] = border & ~cut;
        upper[word] = border & below;
        lower[word] = border & ~below;
        anyOpen |= border & ~cut;
      });
      if (anyOpen === 0) return;
      for (const [side, words] of [
        ["lower", lower],
        ["upper", upper],
      ] as const) {
        eachRun(BitGrid.own(1, columns, words), 0, (start, end, state) => {
          if (state === 0) return;
          const openHere = onesBetween(open, start, end);
          if (100 * openHere <= allowed * (end - start)) return;
          borders.push({
            side,
            ends: [start, end - 1],
            picks: [pick, Math.max(pick, other)],
            open: openHere,
            pairs: end - start,
          });
        });
      }
    });
  });
  return borders;
}

/** The picks on which the ground leaves a shaft of the units where the figure puts it. */
function picksWithSay({ layout, weft }: Cloth): number[] {
  const picks = Array.from({ length: weft.count }, (_, pick) => pick);
  if (layout === undefined) return picks;
  const { steps, threading } = layout.draft.ground;
  const say = steps.map(({ raise, sink }) => {
    const moved = new Set([...raise, ...sink]);
    return threading.some((shaft) => !moved.has(shaft));
  });
  return picks.filter((pick) => say[layout.stepOfPick[pick]!]);
}

function onesBetween(words: Uint32Array, start: number, end: number): number {
  let ones = 0;
  for (let word = start >>> 5; word * 32 < end; word++) {
    const from = Math.max(0, start - word * 32);
    const to = Math.min(32, end - word * 32);
    const mask = (to === 32 ? -1 : 2 ** to - 1) & (-1 << from);
    ones += onesIn(words[word]! & mask);
  }
  return ones;
}

function eachBit(word: number, visit: (bit: number) => void): void {
  for (let left = word; left !== 0; left &= left - 1) visit(31 - Math.clz32(left & -left));
}
