import { checkGrid, checkShaftDraft, drawdownOfDraft, rules, type ShaftDraft, settOf } from "@drawcord/check";
import { toBooleans } from "@drawcord/grid";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shaftDrafts } from "../arbitraries.js";

/** 2/2 twill on four shafts, six treadles of which two have no ties. */
const twill: ShaftDraft = {
  shafts: 4,
  threading: [[1], [2], [3], [4], [1], [2], [3], [4]],
  shedding: {
    kind: "tie-up",
    tieUp: [[1, 2], [2, 3], [3, 4], [1, 4], [], []],
    treadling: [[1], [2], [3], [4]],
  },
  rising: true,
  warp: {},
  weft: {},
};

const messages = (draft: ShaftDraft, rule: string) =>
  checkShaftDraft(draft)
    .findings.filter((finding) => finding.rule === rule)
    .map(({ message }) => message);

describe("a plain draft", () => {
  it("with treadles tied to nothing is warned of them", () => {
    expect(messages(twill, "treadle-without-tie")).toEqual(["treadles 5-6 are tied to no shafts"]);
    expect(checkShaftDraft(twill)).toMatchObject({ ok: true, summary: { error: 0, warning: 1 } });
  });

  it("with ends on no shaft, or picks without a shed, is in error", () => {
    const bare = { ...twill, threading: [[1], [], [], [4], [], [2], [3], [4]] };
    expect(messages(bare, "end-without-shaft")).toEqual([
      "ends 2-3 hang on no shaft",
      "end 5 hangs on no shaft",
    ]);
    const shedding = { kind: "lift-plan" as const, liftPlan: [[], [], [1, 2], [1, 2, 3, 4], [3, 4]] };
    expect(messages({ ...twill, shedding }, "pick-without-shed")).toEqual([
      "picks 1-2 lift no end",
      "pick 4 lifts every end",
    ]);
    expect(checkShaftDraft({ ...twill, shedding }).ok).toBe(false);
    expect(checkShaftDraft({ ...twill, shedding }).rules.skipped).toContainEqual({
      rule: "treadle-without-tie",
      reason: "the draft has a lift plan and no treadles",
    });
  });

  it("is measured as its cloth is, at the sett of its threads", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const { findings, summary, ok, rules: looked, ...measured } = checkShaftDraft(draft);
        const { colours } = draft.weft;
        // Each colour of the weft is a shuttle.
        const shuttles = colours === undefined ? {} : { yarnOfPick: colours };
        const grid = checkGrid(drawdownOfDraft(draft), { sett: settOf(draft), ...shuttles });
        const { findings: ofCloth, summary: _, ok: _ok, rules: ran, ...cloth } = grid;
        expect(measured).toEqual(cloth);
        const own: readonly string[] = rules.flatMap((rule) => ("plainOnly" in rule ? [rule.name] : []));
        expect(findings.filter(({ rule }) => !own.includes(rule))).toEqual(ofCloth);
        expect(looked.ran.filter((rule) => !own.includes(rule))).toEqual(ran.ran);
        expect(looked.ran.length + looked.skipped.length).toBe(
          ran.ran.length + ran.skipped.length + own.length,
        );
        for (const severity of ["error", "warning", "note"] as const) {
          expect(summary[severity]).toBe(findings.filter((finding) => finding.severity === severity).length);
        }
        expect(ok).toBe(summary.error === 0);
      }),
    );
  });

  it("has as many picks without a shed as rows of one square, and as many bare ends and treadles as there are", () => {
    fc.assert(
      fc.property(shaftDrafts(), (draft) => {
        const { findings } = checkShaftDraft(draft);
        const count = (rule: string) =>
          findings
            .filter((finding) => finding.rule === rule)
            .reduce((sum, finding) => sum + (finding.count ?? 1), 0);
        const flat = toBooleans(drawdownOfDraft(draft)).filter((row) => new Set(row).size === 1).length;
        expect(count("pick-without-shed")).toBe(flat);
        const bare = (sets: readonly (readonly number[])[]) => sets.filter((set) => set.length === 0).length;
        expect(count("end-without-shaft")).toBe(bare(draft.threading));
        const { shedding } = draft;
        expect(count("treadle-without-tie")).toBe(shedding.kind === "tie-up" ? bare(shedding.tieUp) : 0);
      }),
    );
  });

  it.each([31, 32, 33, 64])("of %i ends is one end away from a pick without a shed", (width) => {
    const threading = Array.from({ length: width }, (_, end) => [end === width - 1 ? 2 : 1]);
    const lifted = (...liftPlan: (readonly number[])[]) => ({
      ...twill,
      threading,
      shedding: { kind: "lift-plan" as const, liftPlan },
    });
    for (const rising of [true, false]) {
      const [none, all] = rising ? ["no end", "every end"] : ["every end", "no end"];
      // All ends but the last, and the last alone.
      expect(messages({ ...lifted([1], [2]), rising }, "pick-without-shed")).toEqual([]);
      expect(messages({ ...lifted([1], [1, 2], [2], []), rising }, "pick-without-shed")).toEqual([
        `pick 2 lifts ${all}`,
        `pick 4 lifts ${none}`,
      ]);
    }
  });

  it("is one shaft away from an end without one, and one tie from a treadle without", () => {
    const onShaft = (shafts: readonly number[]) => ({ ...twill, threading: twill.threading.with(7, shafts) });
    expect(messages(onShaft([4]), "end-without-shaft")).toEqual([]);
    expect(messages(onShaft([]), "end-without-shaft")).toEqual(["end 8 hangs on no shaft"]);
    const tied = (shafts: readonly number[]): ShaftDraft => ({
      ...twill,
      shedding: { kind: "tie-up", tieUp: [[1, 2], shafts, [3, 4]], treadling: [[1], [2], [3]] },
    });
    expect(messages(tied([2]), "treadle-without-tie")).toEqual([]);
    expect(messages(tied([]), "treadle-without-tie")).toEqual(["treadle 2 is tied to no shaft"]);
  });

  it("has the sett that its spacing gives", () => {
    const spaced = (unit: "centimeters" | "inches" | "decipoints", all: number) =>
      settOf({ ...twill, warp: { unit, spacing: { all } } }).endsPerCm;
    expect(spaced("centimeters", 0.1)).toBeCloseTo(10, 12);
    // 20 ends an inch: a spacing of 1/20 in, or of 36 decipoints.
    expect(spaced("inches", 0.05)).toBeCloseTo(20 / 2.54, 12);
    expect(spaced("decipoints", 36)).toBeCloseTo(20 / 2.54, 12);
    expect(spaced("inches", 0)).toBeUndefined();
    expect(
      settOf({ ...twill, weft: { unit: "centimeters", spacing: { each: [0.1, 0.2, 0.1, 0.2] } } }),
    ).toEqual({
      picksPerCm: expect.closeTo(1 / 0.15, 10),
    });
  });
});
