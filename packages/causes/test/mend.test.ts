import { type CheckOptions, check } from "@drawcord/check";
import { sayChange, type UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { mend } from "../src/index.js";

/** Clean twill, n ends to a unit and picks to a row. */
const twill: UnitDraft["ground"] = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

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
    expect(mends).toMatchObject([{ rules: ["open-cut"], changes: [{ change: "start-ground" }] }]);
    expect(check(mends[0]!.draft).findings).toEqual([]);
  });

  it.each([
    ["raise", "tie step 3 of the ground to raise shaft 3 and to sink shaft 2"],
    ["sink", "tie step 3 of the ground to raise shaft 3 and to sink shaft 2"],
  ] as const)("ties a treadle that was left without what it should %s", (part, words) => {
    const steps = twill.steps.map((step, i) => (i === 2 ? { ...step, [part]: [] } : step));
    const faulty = { ...figured, ground: { ...twill, steps } };
    const mends = mend(faulty, { limits: { float: { threads: 6 } } });
    expect(mends.flatMap(({ changes }) => changes.map((change) => sayChange(change)))).toEqual([words]);
    expect(mends.at(-1)!.draft).toEqual(figured);
  });

  it("says what it asks in words", () => {
    expect(sayChange({ change: "start-ground", steps: 1 })).toBe("begin the ground's treadling 1 step later");
    expect(sayChange({ change: "swap-ground" })).toBe(
      "sink on every treadle what it raises, and raise what it sinks",
    );
  });
});

/** The example of a rule with just one row that is not even, as it is titled there. */

describe("mending slips", () => {
  const point = [1, 2, 3, 4, 5, 4, 3, 2, 1].map((shaft) => [shaft]);
  const lozenge = [[5], [4, 5], [3, 4, 5], [2, 3, 4], [1, 2, 3], [2, 3, 4], [3, 4, 5], [4, 5], [5]];
  const good: UnitDraft = { ground: twill, unitEnds: 4, threading: point, lifts: lozenge, picksPerRow: 4 };

  it("finds nothing to mend in what is whole", () => {
    expect(mend(good)).toEqual([]);
  });

  it.each([
    [7, 4],
    [2, 1],
    [3, 9],
  ])(
    "hangs unit %i, which hangs on shaft %i, as its counterpart hangs, and not the counterpart as it",
    (unit, shaft) => {
      const [found] = mend({ ...good, threading: point.with(unit - 1, [shaft]) });
      expect(found!.changes).toEqual([{ change: "thread", unit, shafts: point[unit - 1] }]);
      expect(found!.draft.threading).toEqual(point);
    },
  );

  it("leaves out a unit that was threaded twice", () => {
    const faulty = { ...good, threading: point.toSpliced(2, 0, [3]) };
    expect(mend(faulty)[0]!.draft.threading).toEqual(point);
  });

  it("draws on both sides of a row what it draws on one", () => {
    const even = [[3], [2, 3, 4], [1, 2, 3, 4, 5], [2, 4]];
    const lifts = [...even, [1, 5], [3], [1, 2, 3, 4, 5], [2, 3], [1, 3, 5], [2, 4]];
    const straight: UnitDraft = { ...good, threading: [[1], [2], [3], [4], [5]], lifts };
    const options = { levels: { "thin-area": "off", "uneven-take-up": "off" } } as const;
    const [found] = mend(straight, options);
    // Both sides or neither: which was meant nothing tells.
    expect(found).toMatchObject({ sure: false, squares: 1 });
    expect(found!.cause!.rivals.length).toBeGreaterThan(0);
  });

  it("lifts a row as its counterpart is lifted", () => {
    for (const row of [2, 8]) {
      const [found] = mend({ ...good, lifts: lozenge.with(row - 1, [4]) });
      expect(found).toMatchObject({ changes: [{ row }] });
      expect(found!.draft.lifts).toEqual(lozenge);
    }
  });
});

describe("mending floats", () => {
  /** A gold weft thrown over static units between picks of tabby. */
  const overStatic: UnitDraft = {
    ground: {
      shafts: 2,
      threading: [1, 2],
      steps: [
        { raise: [1], sink: [2] },
        { raise: [], sink: [], weft: "gold" },
        { raise: [2], sink: [1] },
      ],
    },
    unitEnds: 4,
    threading: [[], [], [1]],
    lifts: [[1], []],
    picksPerRow: 3,
  };

  it("ties down on its picks what no square can bind", () => {
    const levels = { "unlike-sides": "off" } as const;
    const options: CheckOptions = { limits: { float: { threads: 7 }, openCuts: 100 }, levels };
    expect(check(overStatic, options).findings.map(({ rule }) => rule)).toContain("float-length");
    const [found] = mend(overStatic, options);
    expect(found!.rules).toContain("float-length");
    expect(found!.changes).toEqual([{ change: "tie", step: 2, raise: [expect.any(Number)], sink: [] }]);
    expect(check(found!.draft, options).floats.weftFace.longest).toBeLessThan(8);
    // Where the figure must cut, the tie would spoil its edges.
    expect(mend(overStatic, { limits: { float: { threads: 7 } }, levels })).toEqual([]);
  });
});

describe("mends of faults that hide each other", () => {
  const point = [1, 2, 3, 4, 5, 4, 3, 2, 1].map((shaft) => [shaft]);
  const lozenge = [[5], [4, 5], [3, 4, 5], [2, 3, 4], [1, 2, 3], [2, 3, 4], [3, 4, 5], [4, 5], [5]];
  const good: UnitDraft = { ground: twill, unitEnds: 4, threading: point, lifts: lozenge, picksPerRow: 4 };
  const late = [...twill.steps.slice(1), ...twill.steps.slice(0, 1)];

  it("undo a late ground, a missing tie, a unit astray and a row astray, each in its turn", () => {
    const steps = late.map((step, i) => (i === 2 ? { ...step, sink: [] } : step));
    const faulty = {
      ...good,
      ground: { ...twill, steps },
      threading: point.with(6, [4]),
      lifts: lozenge.with(1, [4]),
    };
    const options = { limits: { float: { threads: 7 } } };
    const mends = mend(faulty, options);
    expect(mends.flatMap(({ rules }) => rules)).toEqual(expect.arrayContaining(["float-length", "open-cut"]));
    expect(check(mends.at(-1)!.draft, options).findings).toEqual([]);
    expect(mends.at(-1)!.draft).toMatchObject({ threading: point, lifts: lozenge });
  });

  it("leave the waiver of what was mended behind", () => {
    const options = {
      waive: [{ rule: "open-cut" as const, reason: "seen", units: [9, 9] as const }],
      levels: { "uneven-take-up": "off" as const },
    };
    const faulty = { ...good, ground: { ...twill, steps: late } };
    expect(mend(faulty, options)).toMatchObject([{ rules: ["open-cut"] }]);
  });
});

describe("a search that is stopped", () => {
  it("gives what it has found, and is told how far it came", () => {
    const steps = twill.steps.map((step, i) => (i === 2 ? { ...step, sink: [] } : step));
    const ground = { ...twill, steps };
    const faulty: UnitDraft = {
      ground,
      unitEnds: 4,
      threading: [[], [1], [2], [1], []],
      lifts: [[], [1], [1, 2], [1], []],
      picksPerRow: 4,
    };
    const options = { limits: { float: { threads: 6 } } };
    const seen: (readonly [number, number])[] = [];
    const whole = mend(faulty, options, { progress: (tried, of) => seen.push([tried, of]) });
    expect(whole.length).toBeGreaterThan(0);
    expect(seen.length).toBeGreaterThan(1);
    for (const [tried, of] of seen) expect(tried).toBeLessThanOrEqual(of);
    expect(mend(faulty, options, { signal: { aborted: true } })).toEqual([]);
  });
});
