import { fromCells, fromText } from "@drawcord/grid";
import { expand, type UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkGrid } from "../src/index.js";
import { inferDrawn } from "../src/measure/infer.js";
import { drawdown } from "./arbitraries.js";
import { cellsOf } from "./slow-twin.js";

/** Damask of blocks: each unit of the figure five units wide and five rows high. */
const damask = fc
  .record({
    figure: fc.array(fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 }),
    ends: fc.constantFrom(4, 8),
  })
  .map(({ figure, ends }): UnitDraft => {
    const raise = ends === 4 ? [1, 2, 3, 4] : [2, 5, 8, 3, 6, 1, 4, 7];
    return {
      ground: {
        shafts: ends,
        threading: Array.from({ length: ends }, (_, i) => i + 1),
        steps: raise.map((shaft) => ({ raise: [shaft], sink: [ends + 1 - shaft] })),
      },
      unitEnds: ends,
      threading: Array.from({ length: 20 }, (_, unit) => [Math.floor(unit / 5) + 1]),
      lifts: Array.from({ length: 20 }, (_, row) =>
        figure[Math.floor(row / 5)]!.flatMap((isDrawn, block) => (isDrawn ? [block + 1] : [])),
      ),
      picksPerRow: ends,
    };
  });

describe("what is drawn, inferred from the face alone", () => {
  it("is what was drawn, but for the threads at the borders of areas", () => {
    fc.assert(
      fc.property(damask, (draft) => {
        const { drawdown: cloth, drawn } = expand(draft);
        const { drawn: inferred, sureness } = inferDrawn(cloth);
        expect(sureness).toBeGreaterThan(0.35);
        let wrong = 0;
        cellsOf(drawn).forEach((line, pick) => {
          line.forEach((isDrawn, end) => {
            if (inferred!.get(pick, end) !== isDrawn) wrong++;
          });
        });
        expect(wrong / (cloth.rows * cloth.columns)).toBeLessThan(0.08);
      }),
      { numRuns: 40 },
    );
  });

  it("is the majority of the 9 x 9 interlacements round each, counted one by one", () => {
    fc.assert(
      fc.property(drawdown(), (cloth) => {
        const cells = cellsOf(cloth);
        let distance = 0;
        const majority = cells.map((line, pick) =>
          line.map((_, end) => {
            const near = cells
              .slice(Math.max(0, pick - 4), pick + 5)
              .flatMap((other) => other.slice(Math.max(0, end - 4), end + 5));
            const share = near.filter(Boolean).length / near.length;
            distance += Math.abs(2 * share - 1);
            return share > 0.5;
          }),
        );
        const { drawn, sureness } = inferDrawn(cloth);
        expect(sureness).toBeCloseTo(distance / (cloth.rows * cloth.columns), 9);
        if (drawn !== undefined) expect(cellsOf(drawn)).toEqual(majority);
        else expect(sureness).toBeLessThan(0.25);
      }),
      { numRuns: 60 },
    );
  });

  it("is left open in plain weave, and the report says how little sure it is", () => {
    const plain = fromCells(40, 40, (pick, end) => (pick + end) % 2 === 0);
    const report = checkGrid(plain);
    expect(report.inferred!.sureness).toBeLessThan(0.05);
    expect(report.balance).toMatchObject({ drawnShare: 0, areas: { count: 0, largest: 0 } });
  });

  it("makes one area of a cloth that is weft-faced all over", () => {
    const twill = fromCells(40, 40, (pick, end) => (pick + end) % 4 === 0);
    expect(checkGrid(twill)).toMatchObject({
      inferred: { sureness: expect.closeTo(0.5, 1) },
      balance: { drawnShare: 0, areas: { count: 1, largest: 1600 } },
    });
    expect(checkGrid(fromText("")).inferred).toEqual({ sureness: 0 });
  });
});
