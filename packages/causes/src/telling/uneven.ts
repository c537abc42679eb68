/**
 * The evenness of a lift plan: it draws the left as the right about one middle, or one group of shafts as another, in all
 * rows but a few.
 */
import type { ShaftSet } from "@drawcord/ground";

/** A row and what it would draw to be even. */
export interface EvenRow {
  readonly row: number;
  readonly lift: ShaftSet;
}

/** For each shaft the one that goes with it; 0 where none does. */
export type Partners = readonly number[];

/** Of the unlike rows, so many may be uneven. */
const MOST_UNEVEN = 0.15;

/** Fewer unlike rows are even by chance. */
const LEAST_EVEN = 4;

/** The evenness that all unlike rows but a few keep, that of most shafts first; undefined where there is none. */
export function evennessOf(lifts: readonly ShaftSet[], highest: number): Partners | undefined {
  const unlike = [...new Map(lifts.map((lift) => [lift.join(), lift])).values()];
  let best: Partners | undefined;
  let most = 0;
  for (const partners of evennesses(highest)) {
    let even = 0;
    let uneven = 0;
    let paired = 0;
    for (const lift of unlike) {
      if (!isEven(lift, partners)) {
        if (++uneven > Math.max(1, unlike.length * MOST_UNEVEN)) break;
        continue;
      }
      const pairs = lift.filter((shaft) => partners[shaft] !== 0 && partners[shaft] !== shaft).length / 2;
      if (pairs > 0) even++;
      paired += pairs;
    }
    if (even < LEAST_EVEN || uneven > Math.max(1, even * MOST_UNEVEN)) continue;
    if (paired > most) {
      most = paired;
      best = partners;
    }
  }
  return best;
}

/** The uneven rows made even, in the two ways: by drawing what is missing, and by leaving what is odd. */
export function evened(lifts: readonly ShaftSet[], partners: Partners): EvenRow[] {
  return lifts.flatMap((lift, row): EvenRow[] => {
    if (isEven(lift, partners)) return [];
    const odd = lift.filter((shaft) => partners[shaft] !== 0 && !lift.includes(partners[shaft]!));
    if (odd.length > 2) return [];
    const wider = [...new Set([...lift, ...odd.map((shaft) => partners[shaft]!)])].sort((a, b) => a - b);
    return [
      { row, lift: wider },
      { row, lift: lift.filter((shaft) => !odd.includes(shaft)) },
    ];
  });
}

/** Whether a row draws no shaft without the one that goes with it. */
export function isEven(lift: ShaftSet, partners: Partners): boolean {
  for (const shaft of lift) {
    const other = partners[shaft] ?? 0;
    if (other !== 0 && other !== shaft && !lift.includes(other)) return false;
  }
  return true;
}

/** Mirrors about every middle that leaves most shafts a partner, and groups side by side. */
function evennesses(highest: number): Partners[] {
  if (highest > 200) return [];
  const all: Partners[] = [];
  const shafts = Array.from({ length: highest + 1 }, (_, shaft) => shaft);
  for (let sum = Math.ceil(highest * 0.75); sum <= highest + 1 + highest * 0.25; sum++) {
    all.push(shafts.map((one) => (one > 0 && sum - one >= 1 && sum - one <= highest ? sum - one : 0)));
  }
  for (let by = Math.max(2, Math.floor(highest / 3)); by <= highest / 2; by++) {
    all.push(
      shafts.map((one) => (one > by && one <= 2 * by ? one - by : one > 0 && one <= by ? one + by : 0)),
    );
  }
  return all;
}
