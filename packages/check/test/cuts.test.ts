import type { BitGrid } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { check, type Finding, type FindingBy, findingsOf } from "../src/index.js";
import { draft } from "./arbitraries.js";

const cutsOf = (findings: readonly Finding[], system: "warp" | "weft") =>
  findingsOf({ findings }, "open-cut").filter((finding) => finding.system === system);
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
        // A border to a selvedge is counted, and not told.
        fc.pre(always && one.selvedge === undefined);
        const { cut, findings } = check(one);
        expect(total(cutsOf(findings, "weft"))).toBe(cut.side.open);
        expect(total(cutsOf(findings, "warp"))).toBe(cut.across.open);
      }),
      { numRuns: 300 },
    );
  });

  it("tells of each border with a greater open share than is allowed, on its side, and of no other", () => {
    fc.assert(
      fc.property(
        draft(),
        fc.oneof(fc.constantFrom(0, 25, 50, 75, 100), fc.integer({ min: 0, max: 100 })),
        (one, openCuts) => {
          const { findings } = check(one, { limits: { openCuts } });
          const open = findingsOf({ findings }, "open-cut");
          const worse = (a: FindingBy<"open-cut">, b: FindingBy<"open-cut">) =>
            b.measured - a.measured || (b.count ?? 1) - (a.count ?? 1);
          expect(open).toEqual(open.toSorted(worse));
          const told = (system: "warp" | "weft") =>
            cutsOf(findings, system)
              .map(({ side, count = 1, measured }) => `${side} ${count} ${measured.toFixed(6)}`)
              .sort();
          expect(told("weft")).toEqual(openOf(sideLines(one), openCuts));
          expect(told("warp")).toEqual(openOf(acrossLines(one), openCuts));
        },
      ),
      { numRuns: 300 },
    );
  });

  it("names the border, its place, its side and the share of it that cuts", () => {
    const clean = island([1, 2, 3, 4], [4, 3, 2, 1]);
    const late = { ...clean.ground, threading: [2, 3, 4, 1] };
    const { findings } = check({ ...clean, ground: late, lifts: [[], [1], []], picksPerRow: [4, 6, 4] });
    expect(findings.filter(({ rule }) => rule === "open-cut").map(({ message }) => message)).toEqual([
      "at 3 of 6 places along the left edge of a drawn area, 50 %, the float runs on; none allowed: ends 4-5, picks 5-10 (units 1-2, row 2)",
      "at 3 of 6 places along the right edge of a drawn area, 50 %, the float runs on; none allowed: ends 12-13, picks 5-10 (units 3-4, row 2)",
    ]);
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

/** One border and its pairs, each cutting (`x`) or open (`o`). */
interface Line {
  readonly side: string;
  readonly pairs: string;
}

/**
 * The left and right edges of drawn areas, cell by cell: beside each end the picks on which it is drawn and the next is
 * not, or the other way round, as a text in which unbroken stretches are found.
 */
function sideLines(draft: UnitDraft): Line[] {
  const { drawdown, drawn, stepOfPick, unitOfEnd } = expand(draft);
  const picks = Array.from({ length: drawdown.rows }, (_, pick) => pick).filter((pick) =>
    hasSay(draft, stepOfPick[pick]!),
  );
  return Array.from({ length: Math.max(0, drawdown.columns - 1) }, (_, end) => end).flatMap((end) =>
    // A border to a selvedge is no edge of the figure.
    unitOfEnd[end]! < 0 || unitOfEnd[end + 1]! < 0
      ? []
      : lines(
          "left",
          "right",
          picks.map((pick) => pairAt(drawdown, drawn, [pick, end + 1], [pick, end])),
        ),
  );
}

/** The lower and upper edges, pick by pick of one weft. */
function acrossLines(draft: UnitDraft): Line[] {
  const { drawdown, drawn, stepOfPick } = expand(draft);
  const wefts = new Set(draft.ground.steps.map(({ weft }) => weft));
  return [...wefts].flatMap((weft) => {
    const picks = Array.from({ length: drawdown.rows }, (_, pick) => pick).filter(
      (pick) => hasSay(draft, stepOfPick[pick]!) && draft.ground.steps[stepOfPick[pick]!]!.weft === weft,
    );
    return picks.slice(1).flatMap((pick, i) =>
      lines(
        "lower",
        "upper",
        Array.from({ length: drawdown.columns }, (_, end) =>
          pairAt(drawdown, drawn, [pick, end], [picks[i]!, end]),
        ),
      ),
    );
  });
}

const hasSay = ({ ground }: UnitDraft, step: number) =>
  ground.threading.some(
    (shaft) => ![...ground.steps[step]!.raise, ...ground.steps[step]!.sink].includes(shaft),
  );

/** `x` and `o` where the second place is undrawn and the first drawn, `X` and `O` the other way round, else a blank. */
function pairAt(
  drawdown: BitGrid,
  drawn: BitGrid,
  place: [number, number],
  before: [number, number],
): string {
  if (drawn.get(...place) === drawn.get(...before)) return " ";
  const letter = drawdown.get(...place) === drawdown.get(...before) ? "o" : "x";
  return drawn.get(...place) ? letter : letter.toUpperCase();
}

function lines(small: string, large: string, pairs: readonly string[]): Line[] {
  return [...pairs.join("").matchAll(/[xo]+|[XO]+/g)].map(([text]) => ({
    side: /[xo]/.test(text) ? small : large,
    pairs: text.toLowerCase(),
  }));
}

/** Side, open pairs and open share of each border with more than `allowed` percent open. */
function openOf(all: readonly Line[], allowed: number): string[] {
  return all
    .map(({ side, pairs }) => ({ side, open: pairs.replaceAll("x", "").length, pairs: pairs.length }))
    .filter(({ open, pairs }) => 100 * open > allowed * pairs)
    .map(({ side, open, pairs }) => `${side} ${open} ${((100 * open) / pairs).toFixed(6)}`)
    .sort();
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
