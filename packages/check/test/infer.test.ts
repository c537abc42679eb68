import { type BitGrid, fromCells, fromText } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkGrid } from "../src/index.js";
import { inferDrawn } from "../src/measure/infer.js";
import { drawdown } from "./arbitraries.js";
import { cellsOf } from "./slow-twin.js";

/** Raise and sink orders: a twill on 3 ends, broken twill on 4, satins on 5 and 8. */
const grounds = [
  { raise: [1, 2, 3], sink: [2, 3, 1] },
  { raise: [1, 2, 3, 4], sink: [4, 3, 2, 1] },
  { raise: [1, 3, 5, 2, 4], sink: [2, 4, 1, 3, 5] },
  { raise: [2, 5, 8, 3, 6, 1, 4, 7], sink: [7, 4, 1, 6, 3, 8, 5, 2] },
];

/** Damask made from units: each square of its figure some units wide and as many rows high, about 16 threads or more. */
const damask = fc
  .record({
    figure: fc.array(fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 }),
    ground: fc.constantFrom(...grounds),
    threads: fc.integer({ min: 16, max: 30 }),
  })
  .map(({ figure, ground: { raise, sink }, threads }): UnitDraft => {
    const ends = raise.length;
    const wide = Math.ceil(threads / ends);
    return {
      ground: {
        shafts: ends,
        threading: raise.map((_, i) => i + 1),
        steps: raise.map((shaft, i) => ({ raise: [shaft], sink: sink[i] === shaft ? [] : [sink[i]!] })),
      },
      unitEnds: ends,
      threading: Array.from({ length: 4 * wide }, (_, unit) => [Math.floor(unit / wide) + 1]),
      lifts: Array.from({ length: 4 * wide }, (_, row) =>
        figure[Math.floor(row / wide)]!.flatMap((isDrawn, block) => (isDrawn ? [block + 1] : [])),
      ),
      picksPerRow: ends,
    };
  });

/** The share of warp on the face in the 9 x 9 interlacements round each, counted one by one. */
function sharesOf(cloth: BitGrid): number[][] {
  const cells = cellsOf(cloth);
  return cells.map((line, pick) =>
    line.map((_, end) => {
      let raised = 0;
      let all = 0;
      for (let p = Math.max(0, pick - 4); p < Math.min(cells.length, pick + 5); p++) {
        for (let e = Math.max(0, end - 4); e < Math.min(line.length, end + 5); e++) {
          all++;
          if (cells[p]![e]) raised++;
        }
      }
      return raised / all;
    }),
  );
}

describe("what is drawn, inferred from the face alone", () => {
  it("is what was drawn wherever it is sure, so that at least the share it is sure of is right", () => {
    let wrongNearBorders = 0;
    fc.assert(
      fc.property(damask, (draft) => {
        const { drawdown: cloth, drawn } = expand(draft);
        const { drawn: inferred, sureness } = inferDrawn(cloth);
        const shares = sharesOf(cloth);
        const contrasts = shares.flat().map((share) => Math.abs(2 * share - 1));
        const contrast = contrasts.toSorted((a, b) => b - a)[Math.ceil(contrasts.length / 10) - 1]!;
        let right = 0;
        let sure = 0;
        let wrongInside = 0;
        cellsOf(drawn).forEach((line, pick) => {
          line.forEach((isDrawn, end) => {
            const isRight = inferred!.get(pick, end) === isDrawn;
            const inside = Math.abs(2 * shares[pick]![end]! - 1) >= contrast / 2 + 0.01;
            if (inside) sure++;
            if (inside && !isRight) wrongInside++;
            if (isRight) right++;
            else wrongNearBorders++;
          });
        });
        const all = cloth.rows * cloth.columns;
        expect(wrongInside).toBe(0);
        expect(right / all).toBeGreaterThanOrEqual(sureness);
        // What is right is 93 % of the cloth and more, and the sureness does not say much less.
        expect(right / all).toBeGreaterThan(0.93);
        expect(sureness).toBeGreaterThan(0.6);
        expect(sureness).toBeGreaterThanOrEqual(sure / all);
      }),
      { numRuns: 20 },
    );
    expect(wrongNearBorders).toBeGreaterThan(0);
  });

  it("is the surer the larger the areas are", () => {
    const stripes = (wide: number) =>
      inferDrawn(
        fromCells(96, 96, (pick, end) => ((pick + end) % 4 === 0) !== (Math.floor(end / wide) % 2 === 1)),
      ).sureness;
    const surenesses = [8, 16, 24, 48, 96].map(stripes);
    expect(surenesses).toEqual(surenesses.toSorted((a, b) => a - b));
    expect(new Set(surenesses).size).toBe(5);
    expect(surenesses.at(-1)).toBe(1);
  });

  it("is the majority of the 9 x 9 interlacements round each, counted one by one", () => {
    let met = 0;
    fc.assert(
      fc.property(drawdown(), (cloth) => {
        const { drawn, sureness } = inferDrawn(cloth);
        if (drawn === undefined) {
          expect(sureness).toBe(0);
          return;
        }
        met++;
        expect(cellsOf(drawn)).toEqual(sharesOf(cloth).map((line) => line.map((share) => share > 0.5)));
      }),
      { numRuns: 100 },
    );
    expect(met).toBeGreaterThan(5);
  });

  it("is left open in plain weave, in a twill alike on both sides and in a cloth smaller than what is looked at", () => {
    const plain = fromCells(40, 40, (pick, end) => (pick + end) % 2 === 0);
    const twill = fromCells(40, 40, (pick, end) => (pick + end) % 4 < 2);
    for (const cloth of [plain, twill, fromText("#"), fromText("........\n".repeat(20).trimEnd())]) {
      const report = checkGrid(cloth);
      expect(report.inferred).toEqual({ sureness: 0 });
      expect(report.balance).toMatchObject({ drawnShare: 0, areas: { count: 0, largest: 0 } });
    }
  });

  it("is left open, and said to be, in a cloth larger than what is looked at", () => {
    const twill = (ends: number) => fromCells(4096, ends, (_, end) => end % 4 === 0);
    expect(checkGrid(twill(4097)).inferred).toEqual({ sureness: 0, tooLarge: true });
    expect(inferDrawn(twill(4096)).sureness).toBeGreaterThan(0);
  });

  it("makes one area of a cloth that is weft-faced all over, and is quite sure of it", () => {
    const twill = fromCells(40, 40, (pick, end) => (pick + end) % 4 === 0);
    expect(checkGrid(twill)).toMatchObject({
      inferred: { sureness: 1 },
      balance: { drawnShare: 0, areas: { count: 1, largest: 1600 } },
    });
    expect(checkGrid(fromText("")).inferred).toEqual({ sureness: 0 });
  });
});
