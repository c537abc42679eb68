import type { UnitDraft } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { type CheckOptions, check } from "../src/index.js";

const draft: UnitDraft = {
  ground: {
    shafts: 4,
    threading: [1, 2, 3, 4],
    steps: [
      { raise: [1], sink: [4] },
      { raise: [2], sink: [3] },
      { raise: [3], sink: [2] },
      { raise: [4], sink: [1] },
    ],
  },
  unitEnds: 4,
  threading: [[], [1], [2], [1], []],
  lifts: [[], [1], [2], [1], []],
  picksPerRow: 4,
  selvedge: { left: [1, 2, 3, 4], right: [1, 2, 3, 4] },
};

const found = (change: Partial<UnitDraft>, options?: CheckOptions) =>
  check({ ...draft, ...change }, options).findings;

describe("a plan of units and rows", () => {
  it("that is right has no findings", () => {
    expect(found({})).toEqual([]);
  });

  it("is told of a lift that draws a shaft without units", () => {
    expect(found({ lifts: [[], [1, 5], [2], [1, 5], []] })).toEqual([
      {
        rule: "unknown-shaft",
        severity: "error",
        message: "2 lifts draw pattern shaft 5, on which no unit hangs: picks 5-16 (rows 2 and 4)",
        harness: "pattern",
        shaft: 5,
        rows: [2, 4],
        runs: {
          rows: [
            [2, 2],
            [4, 4],
          ],
        },
        picks: [5, 16],
        count: 2,
      },
    ]);
  });

  it("is told of a lift that draws the static units, and not also of an unknown shaft", () => {
    expect(
      found({ lifts: [[], [1], [2, 9], [1], []] }, { staticShaft: 9 }).map(({ message }) => message),
    ).toEqual(["a lift draws shaft 9, which stands for the static units: picks 9-12 (row 3)"]);
  });

  it("may hang static units on the number that diagrams give them", () => {
    expect(found({ threading: [[9], [1], [2], [1], [9]] }, { staticShaft: 9 })).toEqual([]);
  });

  it("is told of a pattern shaft that no lift draws, with its units", () => {
    expect(found({ threading: [[], [1], [2], [3], [3]] }).map(({ message }) => message)).toContain(
      "no lift draws pattern shaft 3, on which 2 units hang: units 4-5",
    );
  });

  it("is told of a ground shaft without ends", () => {
    const ground = { ...draft.ground, shafts: 5 };
    expect(found({ ground }).map(({ message }) => message)).toEqual(["ground shaft 5 carries no ends"]);
  });

  it("is told of a treadle too many with what each of them does, so that the odd one is seen", () => {
    const [first, ...rest] = draft.ground.steps;
    const ground = { ...draft.ground, steps: [first!, ...rest, { raise: [1], sink: [] }, ...rest] };
    const told = found({ ground }, { loom: { treadles: 4 } }).filter(({ rule }) => rule === "loom-capacity");
    expect(told.map(({ message }) => message)).toEqual([
      "the plan needs 5 treadles, and the loom has 4: raise 1 sink 4, raise 2 sink 3, raise 3 sink 2, raise 4 sink 1 and raise 1 sink none",
    ]);
  });

  it("is told of ends that the selvedge leaves loose", () => {
    const ground = { ...draft.ground, shafts: 6 };
    const loose = found({ ground, selvedge: { left: [5, 5], right: [6] } }).filter(
      ({ rule }) => rule === "loose-thread",
    );
    expect(loose.map(({ message }) => message)).toEqual([
      "2 loose ends that never interlace: they lie on the back all along: ends 1-2, picks 1-20 (rows 1-5)",
      "a loose end that never interlaces: it lies on the back all along: end 23, picks 1-20 (rows 1-5)",
    ]);
  });
});

describe("what a weaver decides", () => {
  const lifts = [[], [1, 5], [2], [1], []];

  it("switches a rule off, and the report says so", () => {
    const report = check({ ...draft, lifts }, { levels: { "unknown-shaft": "off" } });
    expect(report.findings).toEqual([]);
    expect(report.rules.skipped).toContainEqual({ rule: "unknown-shaft", reason: "it is switched off" });
    expect(report.rules.ran).not.toContain("unknown-shaft");
  });

  it("lowers a rule to a note, and the cloth is in order", () => {
    const report = check({ ...draft, lifts }, { levels: { "unknown-shaft": "note" } });
    expect(report.summary).toEqual({ error: 0, warning: 0, note: 1 });
    expect(report.ok).toBe(true);
  });

  it("waives a finding where it lies, with her reason", () => {
    const waive = [
      { rule: "unknown-shaft", rows: [1, 3], reason: "shaft 5 comes with the next warp" },
    ] as const;
    const report = check({ ...draft, lifts }, { waive });
    expect(report.findings.map(({ waived }) => waived)).toEqual(["shaft 5 comes with the next warp"]);
    expect(report).toMatchObject({ ok: true, waived: 1, summary: { error: 0, warning: 0, note: 0 } });
  });

  it("does not waive what reaches beyond the place she named", () => {
    const waive = [{ rule: "unknown-shaft", rows: [1, 1], reason: "elsewhere" }] as const;
    expect(check({ ...draft, lifts }, { waive })).toMatchObject({ ok: false, waived: 0 });
  });
});

describe("options that cannot be meant are refused", () => {
  it.each([
    [{ sett: { endsPerCm: 0 } }, "bad-sett", "endsPerCm is 0; expected a number above 0"],
    [{ limits: { float: { mm: -1 } } }, "bad-limit", "the limit float is -1 mm; expected a number above 0"],
    [{ limits: { openCuts: 120 } }, "bad-limit", "openCuts is 120; expected percent from 0 to 100"],
    [{ levels: { "no-such": "off" } }, "unknown-rule", /^there is no rule no-such; the rules are .*layers, /],
    [{ waive: [{ rule: "no-such", reason: "" }] }, "unknown-rule", /^there is no rule no-such/],
  ] satisfies [object, string, string | RegExp][])("%j", (asked, code, message) => {
    const options = asked as CheckOptions;
    expect(() => check(draft, options)).toThrow(expect.objectContaining({ code }));
    expect(() => check(draft, options)).toThrow(message);
  });
});

it("a rule that there is not does not compile", () => {
  // @ts-expect-error a level for a rule by a slip of the hand
  const levels: CheckOptions = { levels: { "open-cuts": "off" } };
  // @ts-expect-error a waiver of such a rule
  const waive: CheckOptions = { waive: [{ rule: "open-cuts", reason: "seen" }] };
  // @ts-expect-error a comparison with such a rule
  const compared = check(draft).findings.filter(({ rule }) => rule === "open-cuts");
  expect([levels, waive, compared]).toHaveLength(3);
});
