import { expand, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { check, type Finding } from "../src/index.js";
import { draft } from "./arbitraries.js";

const cutsOf = (findings: readonly Finding[], system: "warp" | "weft") =>
  findings.filter((finding) => finding.rule === "open-cut" && finding.system === system);
const total = (findings: readonly Finding[]) => findings.reduce((sum, { count = 1 }) => sum + count, 0);

/** A figure of drawn units with undrawn ones on every side, on straight threading of n ends. */
function island(raise: readonly number[], sink: readonly number[]): UnitDraft {
  const shafts = raise.length;
  return {
    ground: {
      shafts,
      threading: raise.map((_, i) => i + 1),
      steps: raise.map((shaft, i) => ({ raise: [shaft], sink: [sink[i]!] })),
    },
    unitEnds: shafts,
    threading: [[], [1], [1], []],
    lifts: [[], [1], [1], [1], []],
    picksPerRow: shafts,
  };
}

describe("the cut of damask", () => {
  // Clean on all four sides: worked out by brute force for all orders of these weaves.
  it.each([
    { raise: [1, 2, 3, 4], sink: [4, 3, 2, 1] },
    { raise: [1, 3, 2, 4], sink: [4, 2, 3, 1] },
    { raise: [2, 5, 8, 3, 6, 1, 4, 7], sink: [7, 4, 1, 6, 3, 8, 5, 2] },
  ])("is clean on all sides for raise $raise with sink $sink", ({ raise, sink }) => {
    const { cut, findings } = check(island(raise, sink));
    const n = raise.length;
    expect(cut).toEqual({
      side: { cutting: 2 * 3 * n, open: 0 },
      across: { cutting: 2 * 2 * n, open: 0 },
    });
    expect(findings.filter(({ rule }) => rule === "open-cut")).toEqual([]);
  });

  it("of raise 1 4 7 2 5 8 3 6 with sink 8 5 2 7 4 1 6 3 is clean sideways but lets 2 ends slip on each lengthways border", () => {
    const { cut, findings } = check(island([1, 4, 7, 2, 5, 8, 3, 6], [8, 5, 2, 7, 4, 1, 6, 3]));
    expect(cut.side.open).toBe(0);
    // Two units wide, a border before and one after the figure: 2 ends in each unit of each border.
    expect(cut.across.open).toBe(2 * 2 * 2);
    const across = cutsOf(findings, "warp");
    expect(across.map(({ count, measured, units, rows }) => ({ count, measured, units, rows }))).toEqual([
      { count: 4, measured: 25, units: [2, 3], rows: [1, 2] },
      { count: 4, measured: 25, units: [2, 3], rows: [4, 5] },
    ]);
  });

  it("never is clean all round for two regular orders on an odd number of ends", () => {
    for (const n of [3, 5, 7, 9]) {
      const order = (step: number, start: number) =>
        Array.from({ length: n }, (_, i) => ((start + i * step) % n) + 1);
      for (let up = 1; up < n; up++) {
        for (let down = 1; down < n; down++) {
          if (gcd(up, n) !== 1 || gcd(down, n) !== 1) continue;
          for (let start = 0; start < n; start++) {
            const raise = order(up, 0);
            const sink = order(down, start);
            if (raise.some((shaft, i) => shaft === sink[i])) continue;
            const { cut } = check(island(raise, sink));
            expect(cut.side.open + cut.across.open).toBeGreaterThan(0);
          }
        }
      }
    }
  });
});

describe("open-cut", () => {
  it("tells of every open pair of the report where one weft weaves and the figure always has its say", () => {
    fc.assert(
      fc.property(draft(), (one) => {
        const { ground } = one;
        const always = ground.steps.every(
          ({ raise, sink, weft }) =>
            weft === undefined &&
            ground.threading.some((shaft) => !raise.includes(shaft) && !sink.includes(shaft)),
        );
        fc.pre(always);
        const { cut, findings } = check(one);
        expect(total(cutsOf(findings, "weft"))).toBe(cut.side.open);
        expect(total(cutsOf(findings, "warp"))).toBe(cut.across.open);
      }),
      { numRuns: 300 },
    );
  });

  it("leaves out borders whose open share is allowed, and no others", () => {
    fc.assert(
      fc.property(draft(), fc.integer({ min: 0, max: 100 }), (one, allowed) => {
        const found = cutsOf(check(one, { limits: { openCuts: allowed } }).findings, "weft");
        expect(total(found)).toBe(openSides(one, allowed));
        for (const { measured = 0 } of found) expect(measured).toBeGreaterThan(allowed);
      }),
    );
  });

  it("is silent where the ground moves every shaft, as under a pattern weft", () => {
    const band: UnitDraft = {
      ground: {
        shafts: 2,
        threading: [1, 2],
        steps: [
          { raise: [1], sink: [2] },
          { raise: [], sink: [], weft: "gold" },
          { raise: [2], sink: [1] },
          { raise: [], sink: [], weft: "gold" },
        ],
      },
      unitEnds: 2,
      threading: [[], [1], []],
      lifts: [[], [1], []],
      picksPerRow: 4,
    };
    const { cut, findings } = check(band);
    expect(cut.across.open).toBeGreaterThan(0);
    expect(findings.filter(({ rule }) => rule === "open-cut")).toEqual([]);
  });
});

/** Open pairs of ends beside each other in borders with more than `allowed` percent open: border by border, cell by cell. */
function openSides(draft: UnitDraft, allowed: number): number {
  const { drawdown, drawn, unitOfEnd, rowOfPick, stepOfPick } = expand(draft);
  const { steps, threading } = draft.ground;
  const borders = new Map<string, { open: number; all: number }>();
  for (let pick = 0; pick < drawdown.rows; pick++) {
    const { raise, sink } = steps[stepOfPick[pick]!]!;
    if (threading.every((shaft) => raise.includes(shaft) || sink.includes(shaft))) continue;
    for (let end = 0; end + 1 < drawdown.columns; end++) {
      if (drawn.get(pick, end) === drawn.get(pick, end + 1)) continue;
      const left = unitOfEnd[end] === -1 ? `selvedge ${end}` : unitOfEnd[end];
      const key = `${left} in row ${rowOfPick[pick]}`;
      const border = borders.get(key) ?? { open: 0, all: 0 };
      border.all++;
      if (drawdown.get(pick, end) === drawdown.get(pick, end + 1)) border.open++;
      borders.set(key, border);
    }
  }
  return [...borders.values()].reduce(
    (sum, { open, all }) => sum + (100 * open > allowed * all ? open : 0),
    0,
  );
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
