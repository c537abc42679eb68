import { andNot, blank } from "@drawcord/grid";
import { assert, property } from "fast-check";
import { describe, expect, it } from "vitest";
import {
  cutOf,
  type Ground,
  groundFromWeave,
  groundPlanOf,
  isClean,
  regularPair,
  satinSteps,
} from "../src/index.js";
import { description, ground, threads } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";
import { clothOf, openByExpanding } from "./slow-twins.js";

/** A ground with one shaft raised and one sunk on each pick, threaded straight. */
function counted(raise: readonly number[], sink: readonly number[]): Ground {
  return {
    shafts: raise.length,
    threading: raise.map((_, i) => i + 1),
    steps: raise.map((shaft, i) => ({ raise: [shaft], sink: [sink[i]!] })),
  };
}

function open(found: Ground) {
  const { sideways, lengthways } = cutOf(found);
  return { sideways: sideways.open, lengthways: lengthways.open };
}

function stepsOf({ steps }: Ground) {
  return { raise: steps.flatMap(({ raise }) => raise), sink: steps.flatMap(({ sink }) => sink) };
}

function coprime(n: number): number[] {
  return Array.from({ length: n }, (_, i) => i).filter((a) => {
    for (let d = 2; d <= n; d++) if (a % d === 0 && n % d === 0) return false;
    return true;
  });
}

/** The order that begins on `start` and moves by `step`. */
function order(n: number, start: number, step: number): number[] {
  return Array.from({ length: n }, (_, p) => ((start + p * step) % n) + 1);
}

describe("the cut of a ground", () => {
  it("is clean all round in the published plans", () => {
    // Derived from the model, after J. T. Taylor, Cotton Weaving and Designing, 1909, pp. 234-235 and T. F. Bell,
    // Jacquard Weaving and Designing, 1895, p. 117; expanded here.
    for (const plan of [
      counted([1, 2, 3, 4], [4, 3, 2, 1]),
      counted([1, 3, 2, 4], [4, 2, 3, 1]),
      counted([2, 5, 8, 3, 6, 1, 4, 7], [7, 4, 1, 6, 3, 8, 5, 2]),
    ]) {
      expect(isClean(cutOf(plan))).toBe(true);
      expect(openByExpanding(plan, plan.shafts, plan.shafts)).toMatchObject({ side: 0, length: 0 });
    }
  });

  it("lets two ends slip on each lengthways border when the 8-end satin begins at the wrong place", () => {
    const { sideways, lengthways } = cutOf(counted([1, 4, 7, 2, 5, 8, 3, 6], [8, 5, 2, 7, 4, 1, 6, 3]));
    expect(sideways).toEqual({ cutting: 16, open: 0, share: 1 });
    expect(lengthways).toEqual({ cutting: 12, open: 4, share: 0.75 });
  });

  it("is what counting an expanded checkerboard says, for any ground and any units and rows", () =>
    assert(
      property(ground, threads, threads, (found, unitEnds, picksPerRow) => {
        const cut = cutOf(found, { unitEnds, picksPerRow });
        const slow = openByExpanding(found, unitEnds, picksPerRow);
        // The expanded chart may go through the repeat more than once.
        const { sideways, lengthways } = cut;
        const rounds = slow.sidePairs / (sideways.open + sideways.cutting);
        const lengths = slow.lengthPairs / (lengthways.open + lengthways.cutting);
        expect(Number.isInteger(rounds) && Number.isInteger(lengths)).toBe(true);
        expect(slow.side).toBe(sideways.open * rounds);
        expect(slow.length).toBe(lengthways.open * lengths);
      }),
    ));

  it("refuses a unit of no ends", () => {
    expectRefusal(
      () => cutOf(counted([1, 2, 3], [2, 3, 1]), { unitEnds: 0 }),
      "bad-size",
      "the number of ends in a unit must be a whole number of at least 1, not 0",
    );
  });
});

describe("two regular orders on n ends", () => {
  const sizes = Array.from({ length: 13 }, (_, i) => i + 4);

  /** The fewest open pairs over all steps and all starts, each pair expanded and counted. */
  function leastOpen(n: number, steps: readonly number[]): number {
    let least = Number.POSITIVE_INFINITY;
    for (const raiseStep of steps) {
      for (const sinkStep of steps) {
        for (let raiseStart = 0; raiseStart < n; raiseStart++) {
          const raise = order(n, raiseStart, raiseStep);
          for (let sinkStart = 0; sinkStart < n; sinkStart++) {
            const sink = order(n, sinkStart, sinkStep);
            if (raise.some((shaft, pick) => shaft === sink[pick])) continue;
            least = Math.min(least, openAtOneCorner(raise, sink));
          }
        }
      }
    }
    return least;
  }

  /** Counts open pairs where four areas meet, and with drawn and undrawn exchanged. */
  function openAtOneCorner(raise: readonly number[], sink: readonly number[]): number {
    const n = raise.length;
    const raised = (end: number, pick: number, drawn: boolean) =>
      drawn ? sink[pick % n] !== (end % n) + 1 : raise[pick % n] === (end % n) + 1;
    let pairs = 0;
    for (const drawn of [false, true]) {
      for (let i = 0; i < n; i++) {
        if (raised(n - 1, i, drawn) === raised(n, i, !drawn)) pairs += 1;
        if (raised(i, n - 1, drawn) === raised(i, n, !drawn)) pairs += 1;
      }
    }
    return pairs;
  }

  it.each(sizes)("n = %i: the best pair is the best of an exhaustive search", (n) => {
    const best = regularPair(n);
    const { side, length } = openByExpanding(best.ground, n, n);
    expect(side + length).toBe(leastOpen(n, coprime(n)));
    expect(best.cut.sideways.open + best.cut.lengthways.open).toBe(side + length);
    expect(side + length === 0).toBe(n % 2 === 0);
  });

  it.each(sizes.filter((n) => satinSteps(n).length > 0))("n = %i: so it is among satins alone", (n) => {
    const { cut } = regularPair(n, satinSteps(n));
    expect(cut.sideways.open + cut.lengthways.open).toBe(leastOpen(n, satinSteps(n)));
  });

  it("an odd number of ends never cuts clean all round; the best leaves 2 pairs open sideways and 2 lengthways", () => {
    for (const n of [5, 7, 9, 11, 13, 15]) {
      expect(open(regularPair(n).ground)).toEqual({ sideways: 2, lengthways: 2 });
    }
  });

  it("cut clean sideways exactly when outer shafts meet, and lengthways when each order begins where the other ends", () => {
    for (const n of [4, 5, 6, 7, 8]) {
      for (const a of coprime(n)) {
        for (const b of coprime(n)) {
          for (let i = 0; i < n * n; i++) {
            const raise = order(n, i % n, a);
            const sink = order(n, Math.floor(i / n), b);
            const sideways = raise.every(
              (shaft, p) => (shaft === 1) === (sink[p] === n) && (shaft === n) === (sink[p] === 1),
            );
            const lengthways = sink[n - 1] === raise[0] && raise[n - 1] === sink[0];
            if (raise.some((shaft, p) => shaft === sink[p])) continue;
            const found = open(counted(raise, sink));
            expect(found.sideways === 0).toBe(sideways);
            expect(found.lengthways === 0).toBe(lengthways);
          }
        }
      }
    }
  });
});

describe("the plan of a weave", () => {
  it("begins the usual grounds where they cut clean", () => {
    expect(stepsOf(groundFromWeave("twill 1/3"))).toEqual({ raise: [1, 2, 3, 4], sink: [4, 3, 2, 1] });
    expect(stepsOf(groundFromWeave("broken twill"))).toEqual({ raise: [1, 3, 2, 4], sink: [4, 2, 3, 1] });
    expect(stepsOf(groundFromWeave("broken twill", { ends: 4 }))).toEqual({
      raise: [1, 3, 2, 4],
      sink: [4, 2, 3, 1],
    });
    expect(stepsOf(groundFromWeave("satin 8 step 3"))).toEqual({
      raise: [2, 5, 8, 3, 6, 1, 4, 7],
      sink: [7, 4, 1, 6, 3, 8, 5, 2],
    });
  });

  it("lists the wrong start of the 8-end satin among its rivals", () => {
    const { rivals } = groundPlanOf("satin 8 step 3");
    expect(rivals.length).toBeGreaterThan(2);
    expect(rivals.map(({ cut }) => [cut.sideways.open, cut.lengthways.open])).toContainEqual([0, 4]);
    for (const rival of rivals) expect(cutOf(rival.ground)).toEqual(rival.cut);
  });

  it("never raises and sinks one shaft on a pick, and its figure is never better than its rivals'", () =>
    assert(
      property(description, threads, threads, (weave, unitEnds, picksPerRow) => {
        const size = { unitEnds, picksPerRow };
        const plan = groundPlanOf(weave, size);
        for (const { raise, sink } of plan.ground.steps) {
          expect(raise.filter((shaft) => sink.includes(shaft))).toEqual([]);
        }
        expect(plan.cut).toEqual(cutOf(plan.ground, size));
        const shares = ({ sideways, lengthways }: typeof plan.cut) => sideways.share + lengthways.share;
        for (const rival of plan.rivals) {
          expect(rival.cut).toEqual(cutOf(rival.ground, size));
          expect(shares(rival.cut)).toBeLessThanOrEqual(shares(plan.cut) + 1e-12);
        }
      }),
    ));

  it("gives a reason for every border that lies open", () =>
    assert(
      property(description, threads, threads, (weave, unitEnds, picksPerRow) => {
        const plan = groundPlanOf(weave, { unitEnds, picksPerRow });
        if (!isClean(plan.cut)) expect(plan.reasons.length).toBeGreaterThan(0);
        if (plan.kind !== "two weaves") return;
        const { sideways, lengthways } = plan.cut;
        const said = (start: string) => plan.reasons.some((reason) => reason.startsWith(start));
        expect(said("a unit of ")).toBe(sideways.open > 0 && unitEnds % plan.ground.threading.length !== 0);
        expect(said("a row of ")).toBe(lengthways.open > 0 && picksPerRow % plan.ground.steps.length !== 0);
      }),
    ));

  it("weaves warp-faced where units are drawn just what it weaves weft-faced where they are not", () =>
    assert(
      property(description, (weave) => {
        const { kind, ground: found } = groundPlanOf(weave);
        if (kind !== "two weaves") return;
        const up = found.steps.map(({ raise }) => raise.length).sort();
        const down = found.steps.map(({ sink }) => sink.length).sort();
        expect(down).toEqual(up);
        // Drawing raises, and never lowers.
        const undrawn = clothOf(found, false);
        expect(andNot(undrawn, clothOf(found, true)).equals(blank(undrawn.rows, undrawn.columns))).toBe(true);
      }),
    ));

  it("says why an odd satin, a unit of 6 over an 8-end satin and a balanced ground are not clean", () => {
    expect(groundPlanOf("satin 5").reasons).toEqual([
      "on 5 ends the mirrored pair would raise and sink shaft 3 on one pick, so two regular orders never cut clean all round",
    ]);
    // 6 ends to a mail over an 8-end satin: J. T. Taylor, Cotton Weaving and Designing, 1909, p. 292.
    expect(groundPlanOf("satin 8 step 3", { unitEnds: 6 }).reasons).toEqual([
      "a unit of 6 ends is no multiple of the 8 ends of the repeat, so units end at 4 places of it",
    ]);
    // Rows of 4 picks over the same satin cut clean, so there is nothing to say of them.
    expect(groundPlanOf("satin 8 step 3", { unitEnds: 6, picksPerRow: 4 }).reasons).toHaveLength(1);
    // Borders of 6 ends and of whole rounds of 5 picks lie open for unlike reasons.
    expect(groundPlanOf("satin 5", { unitEnds: 6 }).reasons).toHaveLength(2);
    expect(groundPlanOf("plain")).toMatchObject({
      kind: "ground alone",
      reasons: [
        "every pick raises or sinks every shaft, so no figure can show; add a pattern weft to show one",
      ],
    });
    expect(groundPlanOf("twill 3/1").reasons).toEqual([
      "drawing can only raise ends, so drawn units weave this warp-faced weave and undrawn units its weft-faced counterpart",
    ]);
  });

  it("lays a pattern weft after each pick of a ground that covers every shaft", () => {
    expect(groundFromWeave("plain with pattern weft untied", { ends: 4 })).toEqual({
      shafts: 4,
      threading: [1, 2, 3, 4],
      steps: [
        { raise: [1, 3], sink: [2, 4] },
        { raise: [], sink: [], weft: "pattern" },
        { raise: [2, 4], sink: [1, 3] },
        { raise: [], sink: [], weft: "pattern" },
      ],
    });
  });
});

describe("all starts and both directions", () => {
  /** The least part left open over every form of the second weave and every place to begin, each counted by `cutOf`. */
  function leastOpenShare(order: readonly number[], size: { unitEnds: number; picksPerRow: number }): number {
    const n = order.length;
    const indices = Array.from({ length: n }, (_, i) => i);
    const mirror = order.map((shaft) => n + 1 - shaft);
    const forms = [order, mirror, order.toReversed(), mirror.toReversed()];
    let least = Number.POSITIVE_INFINITY;
    for (const form of forms) {
      for (const pickShift of indices) {
        for (const shaftShift of indices) {
          const sink = indices.map((p) => ((form[(p + pickShift) % n]! - 1 + shaftShift) % n) + 1);
          if (sink.some((shaft, p) => shaft === order[p])) continue;
          for (const end of indices) {
            const threading = indices.map((e) => ((e + end) % n) + 1);
            for (const pick of indices) {
              const steps = indices.map((p) => ({
                raise: [order[(p + pick) % n]!],
                sink: [sink[(p + pick) % n]!],
              }));
              const { sideways, lengthways } = cutOf({ shafts: n, threading, steps }, size);
              least = Math.min(least, 2 - sideways.share - lengthways.share);
            }
          }
        }
      }
    }
    return least;
  }

  it.each([
    [[1, 2, 4, 3], 4, 4],
    [[1, 2, 4, 3], 6, 3],
    [[1, 3, 5, 2, 4], 5, 5],
    [[1, 3, 5, 2, 4], 3, 10],
    [[1, 2, 4, 5, 3], 5, 4],
    [[1, 3, 5, 2, 6, 4], 4, 4],
    [[1, 4, 2, 3, 6, 5], 6, 6],
    // Here only the mirror left for right, and there only the order end for end, reaches the best.
    [[1, 5, 4, 6, 3, 2], 6, 5],
    [[1, 5, 4, 6, 3, 2], 5, 6],
  ])(
    "of the order %j, units of %i and rows of %i, no other cuts better than the plan",
    (order, unitEnds, picksPerRow) => {
      const size = { unitEnds, picksPerRow };
      const { sideways, lengthways } = groundPlanOf(`satin order ${order.join(" ")}`, size).cut;
      expect(2 - sideways.share - lengthways.share).toBeCloseTo(leastOpenShare(order, size), 12);
    },
  );
});
