import { type CheckOptions, check, type Report } from "@drawcord/check";
import { applyChange, type Change, sayChange, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draft, repeat, slippedDraft, smallDraft } from "../../check/test/arbitraries.js";
import { applyTogether, findCauses, mend } from "../src/index.js";
import { worseThan } from "./worse-slowly.js";

/** Whether a rule finds anything that the weaver has not accepted. */
const finds = ({ findings }: Report, rule: string) =>
  findings.some((finding) => finding.rule === rule && finding.waived === undefined);

/** Mends a draft, holds every mend to the law, and tells the rules and the changes of each. */
function mendLawfully(one: UnitDraft, options: CheckOptions, tell: (name: string) => void): void {
  let current = one;
  const slips: Change[] = [];
  for (const { cause, changes, draft: mended, rules } of mend(one, options)) {
    for (const change of changes) {
      expect(sayChange(change)).toMatch(/^[a-z].*\S$/);
      tell(change.change);
    }
    if (cause !== undefined) {
      slips.push(...changes);
      expect(applyTogether(one, slips)).toEqual(mended);
      current = mended;
      tell(cause.sure ? "sure" : "offered");
      continue;
    }
    const before = check(current, options);
    const after = check(mended, options);
    expect(rules.length).toBeGreaterThan(0);
    for (const rule of rules) {
      expect([rule, finds(before, rule), finds(after, rule)]).toEqual([rule, true, false]);
      tell(rule);
    }
    expect(worseThan(before, after, rules)).toEqual([]);
    expect(changes.reduce(applyChange, current)).toEqual(mended);
    current = mended;
  }
}

function tally(): { readonly tell: (name: string) => void; readonly times: Record<string, number> } {
  const times: Record<string, number> = {};
  return {
    times,
    tell: (name) => {
      times[name] = (times[name] ?? 0) + 1;
    },
  };
}

const floats = fc.integer({ min: 3, max: 9 }).map((threads) => ({ float: { threads } }));

it("the mends are the same where report and causes are known already", () => {
  const options = { limits: { float: { threads: 5 } } };
  fc.assert(
    fc.property(slippedDraft, (one) => {
      const report = check(one, options);
      const { causes } = findCauses(one, options, { report });
      expect(mend(one, options, { report, causes })).toEqual(mend(one, options));
    }),
    { numRuns: 20 },
  );
});

describe("every mend makes its rules pass, breaks no other, and is the sum of its changes", () => {
  it("in hundreds of good drafts with one slip", { timeout: 600_000 }, () => {
    const { tell, times } = tally();
    const faulty = fc.tuple(slippedDraft, floats, repeat, fc.constantFrom(9, 99));
    fc.assert(
      fc.property(faulty, ([one, limits, along, staticShaft]) => {
        mendLawfully(one, { limits, repeat: along, staticShaft }, tell);
      }),
      { numRuns: 150 },
    );
    for (const name of ["sure", "offered", "start-ground", "tie", "leave"]) {
      expect([name, (times[name] ?? 0) > 3]).toEqual([name, true]);
    }
  });

  it("in small drafts with any fault of balance", { timeout: 600_000 }, () => {
    const { tell, times } = tally();
    const limits = fc.record(
      {
        float: fc.record({ threads: fc.integer({ min: 2, max: 6 }) }),
        takeUp: fc.constantFrom(10, 15, 30),
        openCuts: fc.constantFrom(0, 50),
        stretch: fc.record({ picks: fc.integer({ min: 2, max: 8 }) }),
        area: fc.record({ squares: fc.integer({ min: 1, max: 6 }) }),
      },
      { requiredKeys: ["float"] },
    );
    fc.assert(
      fc.property(smallDraft, limits, (one, allowed) => {
        mendLawfully(one, { limits: allowed, sett: { endsPerCm: 1, picksPerCm: 1 } }, tell);
      }),
      { numRuns: 150 },
    );
    const names = [
      "float-length",
      "edge-float",
      "long-stretch",
      "large-area",
      "uneven-take-up",
      "unlike-sides",
    ];
    for (const name of [...names, "draw", "leave"])
      expect([name, (times[name] ?? 0) > 1]).toEqual([name, true]);
  });

  it("in any draft", { timeout: 600_000 }, () => {
    const { tell, times } = tally();
    fc.assert(
      fc.property(draft(), floats, (one, limits) => mendLawfully(one, { limits }, tell)),
      { numRuns: 8 },
    );
    expect(Object.keys(times).length).toBeGreaterThan(5);
  });
});
