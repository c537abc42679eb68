import { check } from "@drawcord/check";
import { applyChange, type Change, parseThreading, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { slippedDraft } from "../../check/test/arbitraries.js";
import { applyTogether, findCauses } from "../src/index.js";
import { findingKind } from "../src/kind-of.js";

/** Clean twill, 4 ends to a unit and 4 picks to a row. */
const twill: UnitDraft["ground"] = {
  shafts: 4,
  threading: [1, 2, 3, 4],
  steps: [1, 2, 3, 4].map((shaft) => ({ raise: [shaft], sink: [5 - shaft] })),
};

/** A figure with a direction, in rows of up to 12 shafts. */
const motif = [
  [6],
  [5, 6, 7],
  [4, 5, 6, 7, 8],
  [3, 4, 8, 9],
  [3, 9, 10],
  [2, 3, 10, 11],
  [2, 11],
  [1, 2, 11, 12],
  [1, 12],
];

const plan = (threading: string, lifts: UnitDraft["lifts"]): UnitDraft => ({
  ground: twill,
  unitEnds: 4,
  threading: parseThreading(threading),
  lifts,
  picksPerRow: 4,
});

const quiet = {
  limits: { float: { threads: 99 }, openCuts: 100, takeUp: 100 },
  levels: { "thin-area": "off", "unlike-sides": "off", "idle-shaft": "off" } as const,
};

describe("slips that no symmetry of the whole plan tells", () => {
  const good = "X*3 1-12 X*2 1-12 X*7";
  const twice = [...motif, [], ...motif];

  it.each<readonly [string, Change]>([
    ["a unit on another shaft in one of two sections", { change: "thread", unit: 20, shafts: [9] }],
    ["two units exchanged", { change: "swap-units", units: [22, 23] }],
    ["a unit left out", { change: "remove-unit", unit: 8 }],
    ["a row of one copy left out", { change: "remove-row", row: 14 }],
    ["a shaft missing from a row of one copy", { change: "leave", row: 4, shafts: [4] }],
    ["a shaft too many in a row of one copy", { change: "draw", row: 13, shafts: [12] }],
    ["two rows of one copy exchanged", { change: "swap-rows", rows: [13, 14] }],
    ["an end of a selvedge astray", { change: "selvedge", side: "left", shafts: [1, 2, 2, 4] }],
    ["a row held for another number of picks", { change: "row-picks", row: 6, picks: 3 }],
  ])("%s", (_, slip) => {
    const sound = { ...plan(good, twice), selvedge: { left: [1, 2, 3, 4], right: [1, 2, 3, 4] } };
    expect(findCauses(sound, quiet).causes).toEqual([]);
    const { causes } = findCauses(applyChange(sound, slip), quiet);
    const mends = causes[0]!.rivals.concat([causes[0]!.changes]);
    const { threading, lifts, selvedge } = sound;
    const restored = mends.map((changes) => applyTogether(applyChange(sound, slip), changes));
    expect(restored.map((one) => [one.threading, one.lifts, one.selvedge])).toContainEqual([
      threading,
      lifts,
      selvedge,
    ]);
  });

  it("a tie of a pattern weft that is missing is put back, not left out of its like too", () => {
    const pattern = { raise: [3], sink: [4], weft: "pattern" };
    const steps = [pattern, { raise: [1, 3], sink: [2, 4] }, pattern, { raise: [2, 4], sink: [1, 3] }];
    const sound: UnitDraft = {
      ...plan(good, twice),
      ground: { shafts: 4, threading: [1, 2, 3, 2, 1, 4, 1, 2], steps },
    };
    for (const tie of [
      { raise: [3], sink: [] },
      { raise: [], sink: [4] },
    ]) {
      const { causes } = findCauses(applyChange(sound, { change: "tie", step: 3, ...tie }), quiet);
      expect(causes[0]?.changes).toEqual([{ change: "tie", step: 3, raise: [3], sink: [4] }]);
    }
  });

  it("a unit missing beside a turn is told where the threading is nearly its own mirror", () => {
    const { causes } = findCauses(plan("X*2 10 X 1-9 8-1 3-9 8-1 X 10 X*2", motif.slice(1)), {});
    expect(causes.map(({ changes }) => changes)).toContainEqual([
      { change: "insert-unit", unit: 22, shafts: [2] },
    ]);
  });

  it("two slips at once are told as two", () => {
    const sound = plan(good, twice);
    const slips: Change[] = [
      { change: "thread", unit: 20, shafts: [9] },
      { change: "draw", row: 13, shafts: [12] },
    ];
    const faulty = slips.reduce(applyChange, sound);
    const { causes } = findCauses(faulty, quiet);
    expect(causes).toHaveLength(2);
    expect(
      applyTogether(
        faulty,
        causes.flatMap(({ changes }) => changes),
      ),
    ).toEqual(sound);
  });
});

describe("plans that are meant", () => {
  const small = [[1], [1, 2], [2, 3], [3, 4], [2, 4], [1, 3]];

  it.each([
    ["mirrored round a seam", "X*2 (1-6 5-2)*3 1 X*2"],
    ["a motif written out twice whose turning unit is not repeated", "1-8 7-1 2-8 7-1"],
    ["borders of unlike width", "X*2 1-8 7-1 X*9"],
    ["a border within", "1-6 X*2 1-6 X*2 1-6"],
    ["sections in the order A B A C A", "1-4 5-8 1-4 9-12 1-4"],
  ])("are no slips: %s", (_, threading) => {
    expect(findCauses(plan(threading, small), quiet).causes).toEqual([]);
  });

  it("nor are rows that are held twice on purpose", () => {
    const held = motif.flatMap((row) => [row, row]);
    expect(findCauses(plan("1-12", held), quiet).causes).toEqual([]);
  });
});

const floats = { limits: { float: { threads: 9 } } };

describe("what a cause explains", () => {
  it("is just what is gone when its edit is made, and of a sure one nothing new above a note comes", () => {
    let told = 0;
    fc.assert(
      fc.property(slippedDraft, (draft) => {
        const report = check(draft, floats);
        const { causes } = findCauses(draft, floats, { report });
        const [only, ...others] = causes;
        if (only === undefined || others.length > 0 || only.changes.some(({ change }) => change === "number"))
          return;
        told++;
        const after = check(applyTogether(draft, only.changes), floats);
        const places = ["ends", "picks", "units", "rows"] as const;
        const near = (a: (typeof report.findings)[number], b: (typeof report.findings)[number]) =>
          findingKind(a) === findingKind(b) &&
          places.every((of) => {
            const [one, other] = [a[of], b[of]];
            const slack = Math.abs(after.size[of] - report.size[of]);
            return !one || !other || (one[0] <= other[1] + slack && other[0] <= one[1] + slack);
          });
        report.findings.forEach((finding, at) => {
          const isThere = after.findings.some((other) => near(finding, other));
          expect([finding.message, only.explains.includes(at)]).toEqual([finding.message, !isThere]);
        });
        if (!only.sure) return;
        const added = after.findings.filter(
          (finding) => !report.findings.some((other) => near(other, finding)),
        );
        expect(added.filter(({ severity }) => severity !== "note")).toEqual([]);
      }),
      { numRuns: 250 },
    );
    expect(told).toBeGreaterThan(60);
  });
});

describe("a picture that is woven once", () => {
  /** A pond and a reed: smooth outlines that nothing repeats. */
  const picture = [
    [2, 3, 4],
    [2, 3, 4, 5, 6],
    [1, 2, 3, 4, 5, 6, 7],
    [2, 3, 4, 5, 6, 7],
    [3, 4, 5, 6],
    [4, 5],
    [10],
    [10],
    [10, 11],
    [11],
  ];
  const once = plan("1-12", picture);

  it("is noted where a square stands alone, or is missing in its midst, and never mended unasked", () => {
    const stray = { ...once, lifts: picture.with(7, [4, 10]) };
    const hole = { ...once, lifts: picture.with(2, [1, 2, 3, 5, 6, 7]) };
    const told = (one: UnitDraft) => findCauses(one, quiet).causes;
    expect(told(once)).toEqual([]);
    expect(told(stray)).toMatchObject([
      { severity: "note", sure: false, changes: [{ change: "leave", row: 8, shafts: [4] }] },
    ]);
    expect(told(hole)).toMatchObject([
      { severity: "note", sure: false, changes: [{ change: "draw", row: 3, shafts: [4] }] },
    ]);
  });
});
