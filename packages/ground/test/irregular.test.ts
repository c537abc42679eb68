import { describe, expect, it } from "vitest";
import { cutOf, groundPlanOf, irregularPair, isClean, regularPair, touching, weaveOf } from "../src/index.js";
import { expandSlowly, openByExpanding } from "./slow-twins.js";

/** Every order of 1 to n. */
function orders(n: number): number[][] {
  if (n === 0) return [[]];
  return orders(n - 1).flatMap((rest) =>
    Array.from({ length: n }, (_, at) => [...rest.slice(0, at), n, ...rest.slice(at)]),
  );
}

/** Whether a pair cuts clean at the corner of four areas, drawn and undrawn either way; interlacement by interlacement. */
function cutsClean(raise: readonly number[], sink: readonly number[]): boolean {
  const n = raise.length;
  for (let i = 0; i < n; i++) {
    // Undrawn, an end is raised where its shaft is; drawn, it is raised unless its shaft is sunk.
    if ((raise[i] === n) === (sink[i] !== 1)) return false;
    if ((sink[i] !== n) === (raise[i] === 1)) return false;
    if ((raise[n - 1] === i + 1) === (sink[0] !== i + 1)) return false;
    if ((sink[n - 1] !== i + 1) === (raise[0] === i + 1)) return false;
  }
  return true;
}

function neighbours(order: readonly number[]): number {
  let count = 0;
  for (let pick = 0; pick < order.length; pick++) {
    const step = Math.abs(order[pick]! - order[(pick + 1) % order.length]!);
    if (step === 1 || step === order.length - 1) count += 1;
  }
  return count;
}

describe("irregular pairs of orders", () => {
  it.each([
    [4, { undrawn: 2, drawn: 2 }],
    [5, { undrawn: 2, drawn: 3 }],
    [6, { undrawn: 0, drawn: 0 }],
  ])("n = %i: of all orders the clean pair with the fewest touching binding points has %j", (n, expected) => {
    let least = Number.POSITIVE_INFINITY;
    let found = 0;
    const all = orders(n);
    for (const raise of all) {
      // Two of the conditions, to spare the rest of the search: an outer shaft meets the opposite outer shaft.
      const first = raise.indexOf(1);
      const last = raise.indexOf(n);
      for (const sink of all) {
        if (sink[first] !== n || sink[last] !== 1) continue;
        if (!cutsClean(raise, sink) || raise.some((shaft, pick) => shaft === sink[pick])) continue;
        found += 1;
        least = Math.min(least, neighbours(raise) + neighbours(sink));
      }
    }
    expect(found).toBeGreaterThan(0);
    const pair = irregularPair(n)!;
    const { undrawn, drawn } = pair.price.touching;
    expect(pair.price.touching).toEqual(expected);
    expect(undrawn + drawn).toBe(least);
    expect(undrawn).toBe(neighbours(pair.ground.steps.flatMap(({ raise }) => raise)));
    expect(drawn).toBe(neighbours(pair.ground.steps.flatMap(({ sink }) => sink)));
  });

  it("3 ends have none", () => {
    for (const raise of orders(3)) {
      for (const sink of orders(3)) {
        if (raise.every((shaft, pick) => shaft !== sink[pick])) expect(cutsClean(raise, sink)).toBe(false);
      }
    }
    expect(irregularPair(3)).toBeUndefined();
  });

  it.each([4, 5, 6, 7, 9, 11, 13, 15, 21])(
    "n = %i: the pair is clean when a chart with all four borders is expanded",
    (n) => {
      const { ground, cut, price } = irregularPair(n)!;
      expect(isClean(cut)).toBe(true);
      expect(cutOf(ground)).toEqual(cut);
      expect(openByExpanding(ground, n, n)).toEqual({
        side: 0,
        sidePairs: 2 * n,
        length: 0,
        lengthPairs: 2 * n,
      });
      // No float is longer than the price says, over the borders and within the areas.
      const { raised } = expandSlowly(
        ground,
        n,
        n,
        6,
        6,
        (unit, row) => Math.floor(unit / 2) % 2 === Math.floor(row / 2) % 2,
      );
      expect(longestRun(raised)).toBe(price.longestFloat);
      const columns = raised[0]!.map((_, end) => raised.map((row) => row[end]!));
      expect(longestRun(columns)).toBe(price.longestFloat);
      expect(price.meanFloat).toBe(n / 2);
    },
  );

  it("on an odd number from 7 on, clean satins leave no binding points touching", () => {
    for (let n = 7; n <= 33; n += 2)
      expect(irregularPair(n)!.price.touching).toEqual({ undrawn: 0, drawn: 0 });
  });

  it("a plan offers one just where its regular pair is not clean", () => {
    expect(groundPlanOf("satin 5").cleaner).toEqual(irregularPair(5));
    expect(groundPlanOf("satin 7 step 3").cleaner).toEqual(irregularPair(7));
    expect(groundPlanOf("satin 8 step 3").cleaner).toBeUndefined();
    expect(groundPlanOf("satin 7 step 3", { unitEnds: 6 }).cleaner).toBeUndefined();
    expect(groundPlanOf("plain").cleaner).toBeUndefined();
  });

  it("on an even number above 6 the regular pair is clean already", () => {
    for (const n of [8, 10, 12]) {
      expect(irregularPair(n)).toBeUndefined();
      expect(isClean(regularPair(n).cut)).toBe(true);
    }
  });

  it("a twill's binding points all touch, a satin's never do", () => {
    expect(touching(weaveOf("twill 1/7").raised.flat())).toBe(8);
    expect(touching(weaveOf("satin 8").raised.flat())).toBe(0);
    expect(touching(weaveOf("satin 4").raised.flat())).toBe(2);
  });
});

function longestRun(threads: readonly (readonly boolean[])[]): number {
  let longest = 0;
  for (const thread of threads) {
    let length = 0;
    thread.forEach((up, i) => {
      length = i > 0 && thread[i - 1] === up ? length + 1 : 1;
      longest = Math.max(longest, length);
    });
  }
  return longest;
}
