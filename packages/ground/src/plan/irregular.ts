import { compareLists, modulo, upTo } from "../arithmetic.js";
import { shaftCount } from "../size.js";
import type { Ground } from "../types.js";
import { straight } from "../weave/orders.js";
import { satinSteps } from "../weave/satin.js";
import { cutOf, type GroundCut } from "./cut.js";

/** A pair of orders, one shaft raised and one sunk on each pick, that no constant step makes; and what it costs. */
export interface IrregularPair {
  /** The two orders as one raise and sink plan. */
  readonly ground: Ground;
  /** How its borders cut. */
  readonly cut: GroundCut;
  /** What it costs. */
  readonly price: IrregularPrice;
}

/** What is given up for a clean cut. */
export interface IrregularPrice {
  /** Binding points that touch the next pick's, in one repeat of the undrawn weave and one of the drawn. */
  readonly touching: {
    /** In one repeat of the undrawn weave. */
    readonly undrawn: number;
    /** In one repeat of the drawn weave. */
    readonly drawn: number;
  };
  /** The longest and the mean float, in threads, of either weave. */
  readonly longestFloat: number;
  /** The mean float of either weave, in threads. */
  readonly meanFloat: number;
}

/** Up to so many ends every order is tried. */
const MOST_TRIED = 6;

/**
 * The pair of irregular orders that cuts clean all round with the fewest touching binding points; units and rows are whole
 * repeats. Up to 6 ends every pair of orders is tried. On a greater odd number the mirrored satins, whose middle shafts
 * would meet on one pick, have two picks of the sinking order exchanged.
 * @param ends ends of a repeat, up to 64
 * @returns nothing below 4 ends, where no pair is clean, and on a greater even number, where a regular pair is
 * @throws {GroundError} `too-large` above 64 ends
 * Derived from the model.
 * @example irregularPair(5)?.cut.sideways.open // 0
 */
export function irregularPair(ends: number): IrregularPair | undefined {
  shaftCount(ends, "an irregular pair");
  const pairs = ends <= MOST_TRIED ? cleanPairs(ends) : exchangedPairs(ends);
  let best: { raise: number[]; sink: number[]; cost: number[] } | undefined;
  for (const { raise, sink } of pairs) {
    const undrawn = touching(raise);
    const drawn = touching(sink);
    const cost = [undrawn + drawn, undrawn, ...raise, ...sink];
    if (!best || compareLists(cost, best.cost) < 0) best = { raise, sink, cost };
  }
  if (!best) return undefined;
  const { raise, sink } = best;
  const ground: Ground = {
    shafts: ends,
    threading: straight(ends),
    steps: raise.map((shaft, pick) => ({ raise: [shaft], sink: [sink[pick]!] })),
  };
  return {
    ground,
    cut: cutOf(ground),
    price: {
      touching: { undrawn: touching(raise), drawn: touching(sink) },
      // Each thread is bound once in a repeat: a float of 1 and one over all the rest.
      longestFloat: ends - 1,
      meanFloat: ends / 2,
    },
  };
}

/**
 * How many binding points of an order touch the next pick's corner to corner, the order joined to itself.
 * @param order the shaft bound on each pick, from 1
 * @example touching([1, 2, 4, 3]) // 2
 */
export function touching(order: readonly number[]): number {
  const n = order.length;
  return order.filter((shaft, pick) => {
    const apart = modulo(order[(pick + 1) % n]! - shaft, n);
    return apart === 1 || apart === n - 1;
  }).length;
}

/**
 * Every pair of orders that cuts clean all round. Where one order binds an outer shaft the other binds the opposite outer
 * one on the same pick, and each begins on the shaft on which the other ends; the rest is free, but for one shaft raised
 * and sunk at once.
 */
function* cleanPairs(n: number): Generator<{ raise: number[]; sink: number[] }> {
  for (const raise of ordersOf(straight(n))) {
    const fixed = raise.map((shaft, pick) => {
      if (shaft === 1) return n;
      if (shaft === n) return 1;
      if (pick === 0) return raise[n - 1];
      return pick === n - 1 ? raise[0] : undefined;
    });
    if (fixed[0] !== raise[n - 1] || fixed[n - 1] !== raise[0]) continue;
    const given = fixed.filter((shaft) => shaft !== undefined);
    if (new Set(given).size < given.length) continue;
    const free = straight(n).filter((shaft) => !given.includes(shaft));
    for (const rest of ordersOf(free)) {
      const left = rest[Symbol.iterator]();
      const sink = fixed.map((shaft) => shaft ?? (left.next().value as number));
      if (sink.every((shaft, pick) => shaft !== raise[pick])) yield { raise, sink };
    }
  }
}

/** Mirrored pairs of satins on an odd number of ends, the pick where both would bind the middle shaft exchanged with another. */
function* exchangedPairs(n: number): Generator<{ raise: number[]; sink: number[] }> {
  if (n % 2 === 0) return;
  const middle = (n + 1) / 2;
  for (const step of satinSteps(n)) {
    for (let start = 1; start <= n; start++) {
      const raise = upTo(n).map((pick) => modulo(start - 1 + pick * step, n) + 1);
      if (raise[0]! + raise[n - 1]! !== n + 1) continue;
      const meeting = raise.indexOf(middle);
      for (const [other, shaft] of raise.entries()) {
        const outer = shaft === 1 || shaft === n || other === 0 || other === n - 1;
        if (outer || other === meeting) continue;
        const sink = raise.map((bound) => n + 1 - bound);
        sink[meeting] = n + 1 - shaft;
        sink[other] = middle;
        yield { raise, sink };
      }
    }
  }
}

/** Every order of some shafts. */
function* ordersOf(shafts: readonly number[]): Generator<number[]> {
  if (shafts.length === 0) yield [];
  for (const first of shafts) {
    for (const rest of ordersOf(shafts.filter((shaft) => shaft !== first))) yield [first, ...rest];
  }
}
