import { assert, property } from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type ACTIONS,
  feetOf,
  type Ground,
  groundFromWeave,
  groundPlanOf,
  type TieUp,
  tieUpOf,
  withSelvedge,
} from "../src/index.js";
import { pulleyPairs } from "../src/loom/pulleys.js";
import { ground as anyGround, description } from "./arbitraries.js";
import { expectRefusal } from "./expect-error.js";
import { expandSlowly } from "./slow-twins.js";

function tied(found: Ground, action: (typeof ACTIONS)[number]): TieUp {
  const ties = tieUpOf(found, action);
  if (!ties.possible) throw new Error(ties.why);
  return ties;
}

const planned = description.map((found) => groundPlanOf(found).ground);

describe("the ties of a countermarch", () => {
  it("an 8-end satin has 8 treadles of two ties each", () => {
    const { ties, count, treadling } = tied(groundFromWeave("satin 8 step 3"), "countermarch");
    expect(ties.slice(0, 2)).toEqual([
      { raise: [2], sink: [7] },
      { raise: [5], sink: [4] },
    ]);
    expect(count).toBe(16);
    expect(treadling).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("treadle by treadle they give the ground's steps back, no two treadles alike", () =>
    assert(
      property(anyGround, (found) => {
        const { ties, count, treadling } = tied(found, "countermarch");
        found.steps.forEach(({ raise, sink }, pick) => {
          const treadle = treadling[pick]!;
          expect(treadle === 0 ? { raise: [], sink: [] } : ties[treadle - 1]).toEqual({ raise, sink });
        });
        expect(new Set(ties.map((tie) => JSON.stringify(tie))).size).toBe(ties.length);
        expect(count).toBe(ties.flatMap(({ raise, sink }) => [...raise, ...sink]).length);
      }),
    ));
});

describe("damask pulleys", () => {
  it("pair the shafts of a mirrored plan, and each treadle needs one tie", () => {
    const { pairs, ties, count } = tied(groundFromWeave("satin 8 step 3"), "pulleys");
    expect(pairs).toEqual([
      [1, 8],
      [2, 7],
      [3, 6],
      [4, 5],
    ]);
    expect(count).toBe(8);
    expect(ties.every(({ raise, sink }) => raise.length === 0 && sink.length === 1)).toBe(true);
  });

  it("cannot pair an odd satin, and say why", () => {
    expect(tieUpOf(groundFromWeave("satin 5"), "pulleys")).toEqual({
      possible: false,
      action: "pulleys",
      why: "shaft 1 rises where shaft 2 sinks, but sinks where shaft 5 rises; over a pulley it can have one partner only",
    });
  });

  it("pull up just the shafts that the ground raises, or there is no way to pair them", () =>
    assert(
      property(anyGround, (found) => {
        const ties = tieUpOf(found, "pulleys");
        const possible = pairings(movingShafts(found)).some((pairs) =>
          found.steps.every(({ raise, sink }) =>
            sameSet(
              sink.map((shaft) => fellow(pairs, shaft)),
              raise,
            ),
          ),
        );
        expect(ties.possible).toBe(possible);
        if (!ties.possible || !ties.pairs) return;
        for (const { raise, sink } of found.steps) {
          expect(
            sameSet(
              sink.map((shaft) => fellow(ties.pairs!, shaft)),
              raise,
            ),
          ).toBe(true);
        }
      }),
    ));

  it("pair the shafts of every mirrored counted weave", () => {
    for (const text of ["twill 1/3", "broken twill", "satin 6", "satin 10 step 3", "plain"]) {
      expect(pulleyPairs(groundFromWeave(text))).toHaveProperty("pairs");
    }
  });
});

describe("a loom that moves shafts one way only", () => {
  it("cannot bind the drawn units of a two-weave ground", () => {
    const found = groundFromWeave("broken twill");
    expect(tieUpOf(found, "jack")).toEqual({
      possible: false,
      action: "jack",
      why: "pick 1 sinks shaft 4 and leaves others to the figure, but a jack only raises: the drawn units would never be bound",
    });
    expect(tieUpOf(found, "sinking")).toEqual({
      possible: false,
      action: "sinking",
      why: "pick 1 raises shaft 1 and leaves others to the figure, but a sinking shed only sinks: the undrawn units would never be bound",
    });
  });

  it("weaves plain and twill, raising or sinking", () => {
    const found = groundFromWeave("twill 2/2");
    expect(tied(found, "jack").ties).toEqual(
      [
        [1, 2],
        [2, 3],
        [3, 4],
        [1, 4],
      ].map((raise) => ({ raise, sink: [] })),
    );
    expect(tied(found, "sinking").ties).toEqual(
      [
        [3, 4],
        [1, 4],
        [1, 2],
        [2, 3],
      ].map((sink) => ({ raise: [], sink })),
    );
    expect(tied(found, "jack").notes.length).toBe(1);
  });
});

describe("a lever or dobby list", () => {
  it("has a bar a pick, with a peg for each shaft moved", () =>
    assert(
      property(planned, (found) => {
        const { ties, count } = tied(found, "list");
        expect(ties).toEqual(found.steps.map(({ raise, sink }) => ({ raise, sink })));
        expect(count).toBe(ties.flatMap(({ raise, sink }) => [...raise, ...sink]).length);
      }),
    ));
});

describe("the feet", () => {
  it("alternate on an even round of treadles, walking from the outside inwards", () => {
    expect(feetOf([1, 2, 3, 4])).toEqual({
      alternate: true,
      left: [1, 3],
      right: [2, 4],
      hanging: [1, 3, 4, 2],
    });
    expect(feetOf([1, 0, 2, 0])).toMatchObject({ alternate: true, left: [1], right: [2] });
    expect(feetOf([1, 1, 2, 2])).toMatchObject({ alternate: true, left: [1], right: [2] });
  });

  it("cannot on an odd one", () => {
    expect(feetOf([1, 2, 3, 4, 5])).toEqual({
      alternate: false,
      why: "an odd number of treadles, 5, so one foot treads twice where the treadling begins again; a second set of treadles, 10 in all, would let the feet alternate",
    });
    expect(feetOf([1, 2, 3, 1, 2, 4])).toMatchObject({ alternate: false });
  });

  it("alternate exactly where some sharing of the treadles lets them", () =>
    assert(
      property(anyGround, (found) => {
        const { treadling, ties, feet } = tied(found, "countermarch");
        const treads = treadling.filter((treadle) => treadle !== 0);
        const changes = treads.flatMap((treadle, i) => {
          const next = treads[(i + 1) % treads.length]!;
          return next === treadle ? [] : [[treadle, next] as const];
        });
        const sharings = Array.from(
          { length: 2 ** ties.length },
          (_, bits) => (treadle: number) => (bits >> (treadle - 1)) & 1,
        );
        const possible = sharings.some((foot) => changes.every(([a, b]) => foot(a) !== foot(b)));
        expect(feet!.alternate).toBe(possible);
        if (!feet!.alternate) return;
        const { left, right, hanging } = feet!;
        expect(changes.every(([a, b]) => left.includes(a) !== left.includes(b))).toBe(true);
        expect([...left, ...right].sort()).toEqual(ties.map((_, i) => i + 1).sort());
        expect([...hanging].sort()).toEqual([...left, ...right].sort());
      }),
    ));
});

describe("a selvedge beside the figure", () => {
  it("weaves plain on two shafts of its own, and the weft catches its outer ends", () => {
    const { ground, left, right, caught } = withSelvedge(groundFromWeave("broken twill"));
    expect(ground.shafts).toBe(6);
    expect(ground.steps[0]).toEqual({ raise: [1, 5], sink: [4, 6] });
    expect(left).toEqual([5, 6, 5, 6]);
    expect(right).toEqual([6, 5, 6, 5]);
    expect(caught).toEqual({ left: true, right: true });
  });

  it("takes more picks to come out with an odd ground", () => {
    expect(withSelvedge(groundFromWeave("satin 5")).ground.steps.length).toBe(10);
  });

  it("in a rib of two picks the weft slips off one edge", () => {
    const { caught } = withSelvedge(groundFromWeave("broken twill"), { weave: "warp rib 2/2", ends: 2 });
    expect(caught).toEqual({ left: true, right: false });
  });

  it("leaves the figure and the ground as they were, and holds however the figure is drawn", () =>
    assert(
      property(planned, (found) => {
        const { ground } = withSelvedge(found);
        const rows = 1;
        const picks = ground.steps.length;
        for (const drawn of [false, true]) {
          const before = expandSlowly(found, found.threading.length, picks, 2, rows, () => drawn).raised;
          const after = expandSlowly(ground, ground.threading.length, picks, 2, rows, () => drawn).raised;
          expect(after).toEqual(before);
        }
        for (const { raise, sink } of ground.steps) {
          for (const shaft of [ground.shafts - 1, ground.shafts]) {
            expect(raise.includes(shaft) !== sink.includes(shaft)).toBe(true);
          }
        }
      }),
    ));

  it("needs ends", () => {
    expectRefusal(
      () => withSelvedge(groundFromWeave("plain"), { ends: 0 }),
      "bad-size",
      "the number of ends of a selvedge must be a whole number of at least 1, not 0",
    );
  });
});

function movingShafts({ shafts, steps }: Ground): number[] {
  const all = Array.from({ length: shafts }, (_, i) => i + 1);
  return all.filter((shaft) =>
    steps.some(({ raise, sink }) => raise.includes(shaft) || sink.includes(shaft)),
  );
}

/** Every way to put shafts in pairs. */
function pairings(shafts: readonly number[]): (readonly [number, number])[][] {
  const [first, ...rest] = shafts;
  if (first === undefined) return [[]];
  return rest.flatMap((other) =>
    pairings(rest.filter((shaft) => shaft !== other)).map((pairs) => [[first, other] as const, ...pairs]),
  );
}

function fellow(pairs: readonly (readonly [number, number])[], shaft: number): number {
  const pair = pairs.find(([a, b]) => a === shaft || b === shaft);
  return pair ? pair[0] + pair[1] - shaft : 0;
}

function sameSet(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((shaft) => b.includes(shaft));
}
