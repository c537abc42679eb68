import type { UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyChange, type CheckOptions, check, mend, type Report, sayChange } from "../src/index.js";
import { draft, slippedDraft } from "./arbitraries.js";

/** Faults of each rule, and the worst of them: what a mend must not raise. */
function weights({ findings }: Report): Map<string, { faults: number; worst: number }> {
  const all = new Map<string, { faults: number; worst: number }>();
  for (const { rule, count = 1, measured = 0 } of findings) {
    const before = all.get(rule) ?? { faults: 0, worst: 0 };
    all.set(rule, { faults: before.faults + count, worst: Math.max(before.worst, Math.abs(measured)) });
  }
  return all;
}

function breaksNothing(before: Report, after: Report, mended: string): boolean {
  const was = weights(before);
  return [...weights(after)].every(([rule, is]) => {
    if (rule === mended) return false;
    const then = was.get(rule) ?? { faults: 0, worst: 0 };
    return is.faults <= then.faults && is.worst <= then.worst + 1e-9;
  });
}

/** Clean twill, n ends to a unit and picks to a row. */
const twill: UnitDraft["ground"] = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

/** Small drafts in which every unit hangs on a shaft of its own, over a ground that binds the figure little. */
const smallDraft = fc
  .tuple(fc.integer({ min: 2, max: 3 }), fc.integer({ min: 2, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .chain(([units, rows, ends]) =>
    fc.record({
      ground: fc.constantFrom<UnitDraft["ground"]>(
        twill,
        {
          shafts: 2,
          threading: [1, 2],
          steps: [
            { raise: [1], sink: [] },
            { raise: [], sink: [2] },
          ],
        },
        { shafts: 1, threading: [1], steps: [{ raise: [], sink: [] }] },
      ),
      unitEnds: fc.constant(ends),
      threading: fc.constant(Array.from({ length: units }, (_, unit) => [unit + 1])),
      lifts: fc.array(fc.subarray(Array.from({ length: units }, (_, unit) => unit + 1)), {
        minLength: rows,
        maxLength: rows,
      }),
      picksPerRow: fc.integer({ min: 1, max: 2 }),
    }),
  );

/** The fewest squares that any draft turns that has no float too long and makes nothing worse, by trying all. */
function fewestTurned(one: UnitDraft, options: CheckOptions): number | undefined {
  const units = one.threading.length;
  const squares = units * one.lifts.length;
  const before = check(one, options);
  let fewest: number | undefined;
  for (let turned = 0; turned < 2 ** squares; turned++) {
    let count = 0;
    for (let bits = turned; bits !== 0; bits &= bits - 1) count++;
    if (fewest !== undefined && count >= fewest) continue;
    const lifts = one.lifts.map((lift, row) =>
      one.threading.flatMap(([shaft], unit) =>
        lift.includes(shaft!) !== (((turned >>> (row * units + unit)) & 1) === 1) ? [shaft!] : [],
      ),
    );
    const after = check({ ...one, lifts }, options);
    if (breaksNothing(before, after, "float-length")) fewest = count;
  }
  return fewest;
}

describe("mending floats", () => {
  it("turns no more squares than the best of all drafts, and finds one where there is one", () => {
    fc.assert(
      fc.property(smallDraft, fc.integer({ min: 2, max: 5 }), (one, threads) => {
        const options: CheckOptions = { limits: { float: { threads } }, levels: others };
        fc.pre(check(one, options).findings.some(({ rule }) => rule === "float-length"));
        const [found] = mend(one, options);
        expect(found?.squares).toBe(fewestTurned(one, options));
      }),
      { numRuns: 40 },
    );
  });
});

/** Only floats are to be mended; the rules that are not switched off must find no more than before. */
const others = {
  "open-cut": "off",
  "uneven-take-up": "off",
  "repeated-row": "off",
  "lift-slip": "off",
  "threading-slip": "off",
} as const;

describe("every mend", () => {
  it("makes its rule pass, breaks no other, and is the sum of its changes", () => {
    let mended = 0;
    fc.assert(
      fc.property(fc.oneof(slippedDraft, draft()), fc.integer({ min: 4, max: 9 }), (one, threads) => {
        const options: CheckOptions = { limits: { float: { threads } } };
        let current = one;
        for (const found of mend(one, options)) {
          const before = check(current, options);
          const after = check(found.draft, options);
          expect(before.findings.some(({ rule }) => rule === found.rule)).toBe(true);
          expect(breaksNothing(before, after, found.rule)).toBe(true);
          expect(found.changes.reduce(applyChange, current)).toEqual(found.draft);
          for (const change of found.changes) expect(sayChange(change)).toMatch(/^[a-z].*\S$/);
          current = found.draft;
          mended++;
        }
      }),
      { numRuns: 80 },
    );
    expect(mended).toBeGreaterThan(30);
  });
});

describe("mending the cut", () => {
  const figured: UnitDraft = {
    ground: twill,
    unitEnds: 4,
    threading: [[], [1], [2], [1], []],
    lifts: [[], [1], [1, 2], [1], []],
    picksPerRow: 4,
  };

  it.each([1, 3])("begins a ground that was begun %i steps too late at the right step again", (late) => {
    const { steps } = twill;
    const ground = { ...twill, steps: [...steps.slice(late), ...steps.slice(0, late)] };
    const faulty = { ...figured, ground };
    expect(check(faulty).findings.map(({ rule }) => rule)).toContain("open-cut");
    const mends = mend(faulty);
    expect(mends).toMatchObject([{ rule: "open-cut", changes: [{ change: "start-ground" }] }]);
    expect(check(mends[0]!.draft).findings).toEqual([]);
  });

  it.each([
    ["raise", "tie step 3 of the ground to raise shaft 3 and to sink shaft 2"],
    ["sink", "tie step 3 of the ground to raise shaft 3 and to sink shaft 2"],
  ] as const)("ties a treadle that was left without what it should %s", (part, words) => {
    const steps = twill.steps.map((step, i) => (i === 2 ? { ...step, [part]: [] } : step));
    const faulty = { ...figured, ground: { ...twill, steps } };
    const mends = mend(faulty, { limits: { float: { threads: 6 } } });
    expect(mends.flatMap(({ changes }) => changes.map(sayChange))).toEqual([words]);
    expect(mends.at(-1)!.draft).toEqual(figured);
  });

  it("says what it asks in words", () => {
    expect(sayChange({ change: "start-ground", steps: 1 })).toBe("begin the ground's treadling 1 step later");
    expect(sayChange({ change: "swap-ground" })).toBe(
      "sink on every treadle what it raises, and raise what it sinks",
    );
  });
});

describe("mending slips", () => {
  const point = [1, 2, 3, 4, 5, 4, 3, 2, 1].map((shaft) => [shaft]);
  const lozenge = [[5], [4, 5], [3, 4, 5], [2, 3, 4], [1, 2, 3], [2, 3, 4], [3, 4, 5], [4, 5], [5]];
  const good: UnitDraft = { ground: twill, unitEnds: 4, threading: point, lifts: lozenge, picksPerRow: 4 };

  it("finds nothing to mend in what is whole", () => {
    expect(mend(good)).toEqual([]);
  });

  it("hangs a unit as its counterpart hangs", () => {
    const faulty = { ...good, threading: point.with(6, [4]) };
    const [found] = mend(faulty);
    expect(found).toMatchObject({ rule: "threading-slip", changes: [{ change: "thread" }] });
    expect(found!.draft.threading).toEqual(found!.draft.threading.toReversed());
  });

  it("leaves out a unit that was threaded twice", () => {
    const faulty = { ...good, threading: point.toSpliced(2, 0, [3]) };
    expect(mend(faulty)[0]!.draft.threading).toEqual(point);
  });

  it("draws on both sides of a row what it draws on one", () => {
    const straight: UnitDraft = {
      ...good,
      threading: [1, 2, 3, 4, 5].map((shaft) => [shaft]),
      lifts: [
        [3],
        [2, 3, 4],
        [1, 2, 3, 4, 5],
        [2, 4],
        [1, 5],
        [3],
        [1, 2, 3, 4, 5],
        [2, 3],
        [1, 3, 5],
        [2, 4],
      ],
    };
    expect(check(straight).findings.map(({ rule }) => rule)).toContain("lift-slip");
    const options = { levels: { "thin-area": "off", "uneven-take-up": "off" } } as const;
    expect(mend(straight, options)).toMatchObject([
      { rule: "lift-slip", changes: [{ change: "draw", row: 8, shafts: [4] }], squares: 1 },
    ]);
  });

  it("lifts a row as its counterpart is lifted", () => {
    const faulty = { ...good, lifts: lozenge.with(1, [4]) };
    const [found] = mend(faulty);
    expect(found).toMatchObject({ rule: "lift-slip", changes: [{ change: "lift" }] });
    expect(found!.draft.lifts).toEqual(found!.draft.lifts.toReversed());
  });
});
