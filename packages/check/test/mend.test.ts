import type { UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { check, mend, sayChange } from "../src/index.js";

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
    expect(found).toMatchObject({ rules: ["threading-slip"], changes: [{ change: "thread" }] });
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
      { rules: ["lift-slip"], changes: [{ change: "draw", row: 8, shafts: [4] }], squares: 1 },
    ]);
  });

  it("lifts a row as its counterpart is lifted", () => {
    const faulty = { ...good, lifts: lozenge.with(1, [4]) };
    const [found] = mend(faulty);
    expect(found).toMatchObject({ rules: ["lift-slip"], changes: [{ change: "lift" }] });
    expect(found!.draft.lifts).toEqual(found!.draft.lifts.toReversed());
  });
});
