import { fromText } from "@drawcord/grid";
import type { UnitDraft } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { check, checkGrid, type Report } from "../src/index.js";
import { inferDrawn } from "../src/measure/infer.js";
import { kindsOf } from "../src/measure/kinds.js";
import { measureThreads } from "../src/measure/threads.js";
import { draft, drawdown, repeat, wideDrawdown } from "./arbitraries.js";
import { cellsOf, type Numbers, runsOf, slowDraft, slowGrid } from "./slow-twin.js";

function numbersOf({ size, floats, cut, balance, integrity }: Report): Numbers {
  const { looseEnds, loosePicks } = integrity;
  return { size, floats, cut, balance, integrity: { looseEnds, loosePicks } };
}

describe("the report's numbers", () => {
  it("are those of a plain count, for a thousand drafts", () => {
    fc.assert(
      fc.property(draft(), repeat, (one, over) => {
        expect(numbersOf(check(one, { repeat: over }))).toEqual(slowDraft(one, over));
      }),
      { numRuns: 1000 },
    );
  });

  it("are those of a plain count, for a thousand drawdowns", () => {
    fc.assert(
      fc.property(drawdown(), repeat, (grid, over) => {
        expect(numbersOf(checkGrid(grid, { repeat: over }))).toEqual(
          slowGrid(grid, inferDrawn(grid).drawn, over),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it.each([8, 16] as const)("do not depend on pieces of %i interlacements", (size) => {
    fc.assert(
      fc.property(fc.oneof(drawdown(), wideDrawdown), fc.boolean(), (grid, joined) => {
        const kinds = kindsOf(grid);
        const { raised, lowered, changes, longest } = measureThreads(grid, kinds, joined, size);
        const lines = cellsOf(grid);
        const runs = lines.flatMap((line) => runsOf(line, joined));
        for (let length = 0; length <= grid.columns; length++) {
          const ofLength = runs.filter((run) => run.length === length);
          expect(raised[length]).toBe(ofLength.filter((run) => run.state).length);
          expect(lowered[length]).toBe(ofLength.filter((run) => !run.state).length);
        }
        lines.forEach((line, row) => {
          const kind = kinds.kindOf[row]!;
          const own = runsOf(line, joined);
          const most = (state: boolean) =>
            Math.max(0, ...own.filter((run) => run.state === state).map((run) => run.length));
          expect(longest[2 * kind]).toBe(most(false));
          expect(longest[2 * kind + 1]).toBe(most(true));
          expect(changes[kind]).toBe(own.length === 1 ? 0 : joined ? own.length : own.length - 1);
        });
      }),
    );
  });

  it("count what is drawn within the units, as shares and as areas: a selvedge changes neither", () => {
    fc.assert(
      fc.property(draft(), (one) => {
        const { selvedge: _, ...units } = one;
        const shafts = one.ground.threading.slice(0, 1);
        const edged = { ...units, selvedge: { left: [...shafts, ...shafts], right: shafts } };
        const [bare, with3] = [check(units).balance, check(edged).balance];
        expect(with3.drawnShare).toBe(bare.drawnShare);
        expect(with3.areas).toEqual(bare.areas);
      }),
      { numRuns: 100 },
    );
    const all: UnitDraft = {
      ground: { shafts: 2, threading: [1, 2], steps: [{ raise: [1], sink: [2] }] },
      unitEnds: 2,
      threading: [[1], [1]],
      lifts: [[1]],
      picksPerRow: 2,
      selvedge: { left: [1, 2] },
    };
    expect(check(all).balance).toMatchObject({ drawnShare: 1, areas: { count: 1, largest: 2 } });
  });

  it("count the floats at the edges of the cloth, and join them where the cloth repeats", () => {
    const cloth = fromText("##.##");
    expect(checkGrid(cloth).floats.weftBack).toEqual({ longest: 2, lengths: { 2: 2 } });
    expect(checkGrid(cloth, { repeat: "ends" }).floats.weftBack).toEqual({ longest: 4, lengths: { 4: 1 } });
  });

  it("tell raised ends from lowered ones: on the face the warp floats where the weft floats on the back", () => {
    const { floats } = checkGrid(fromText("##.\n##.\n#.."));
    expect(floats.warpFace).toEqual({ longest: 3, lengths: { 2: 1, 3: 1 } });
    expect(floats.warpBack).toEqual({ longest: 3, lengths: { 1: 1, 3: 1 } });
    expect(floats.weftFace).toEqual({ longest: 2, lengths: { 1: 2, 2: 1 } });
    expect(floats.weftBack).toEqual({ longest: 2, lengths: { 1: 1, 2: 2 } });
  });

  it("are nothing for a cloth without picks", () => {
    const { size, balance, integrity, ok } = checkGrid(fromText(""));
    expect(size).toEqual({ ends: 0, picks: 0, units: 0, rows: 0 });
    expect(balance.intersections.ends).toEqual({ least: 0, most: 0, mean: 0 });
    expect(integrity).toEqual({ hangsTogether: true, layers: 0, looseEnds: [], loosePicks: [] });
    expect(ok).toBe(true);
  });

  it("are the same a second time, to the byte", () => {
    fc.assert(
      fc.property(draft(), (one) => {
        expect(JSON.stringify(check(one))).toBe(JSON.stringify(check(one)));
      }),
      { numRuns: 50 },
    );
  });
});
