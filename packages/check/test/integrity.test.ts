import { type BitGrid, columnCounts, fromCells, fromText, rowCounts } from "@drawcord/grid";
import fc from "fast-check";
import { DirectedGraph } from "graphology";
import { stronglyConnectedComponents } from "graphology-components";
import { describe, expect, it } from "vitest";
import { checkGrid } from "../src/index.js";
import { integrityOf, threadsOf } from "../src/measure/integrity.js";
import { drawdown } from "./arbitraries.js";
import { cellsOf } from "./slow-twin.js";

/** Components of the arrows from the upper to the lower thread at every crossing, each sorted, by a graph library. */
function componentsOf(grid: BitGrid): string[][] {
  const graph = new DirectedGraph();
  for (let end = 0; end < grid.columns; end++) graph.addNode(`end ${end + 1}`);
  for (let pick = 0; pick < grid.rows; pick++) graph.addNode(`pick ${pick + 1}`);
  cellsOf(grid).forEach((line, pick) => {
    line.forEach((raised, end) => {
      const threads = [`end ${end + 1}`, `pick ${pick + 1}`] as const;
      graph.addDirectedEdge(threads[raised ? 0 : 1], threads[raised ? 1 : 0]);
    });
  });
  return stronglyConnectedComponents(graph).map((component) => component.sort());
}

function layersOf(grid: BitGrid): string[][] {
  const integrity = integrityOf(rowCounts(grid), columnCounts(grid));
  return Array.from({ length: integrity.layers }, (_, layer) => {
    const { ends, picks } = threadsOf(integrity, layer, layer + 1);
    return [...ends.map((end) => `end ${end}`), ...picks.map((pick) => `pick ${pick}`)].sort();
  });
}

/**
 * Clapham's criterion by trying every (i, j). C. R. J. Clapham, When a fabric hangs together, Bulletin of the London
 * Mathematical Society 12 (1980) 161-164; its statement from memory, held here to the graph library's answer.
 */
function fallsApart(grid: BitGrid): boolean {
  const cells = cellsOf(grid).map((line) => line.map((raised) => (raised ? 0 : 1)));
  const rowSums = cells.map((line) => line.reduce<number>((a, b) => a + b, 0)).sort((a, b) => b - a);
  const columnSums = Array.from({ length: grid.columns }, (_, column) =>
    cells.reduce((sum, line) => sum + line[column]!, 0),
  ).sort((a, b) => a - b);
  const m = grid.rows;
  const n = grid.columns;
  for (let i = 0; i <= m; i++) {
    for (let j = 0; j <= n; j++) {
      if ((i === 0 && j === 0) || (i === m && j === n)) continue;
      const left =
        rowSums.slice(0, i).reduce((a, b) => a + b, 0) - columnSums.slice(0, j).reduce((a, b) => a + b, 0);
      if (left === i * (n - j)) return true;
    }
  }
  return false;
}

/** Small cloths, most of them woven of a few layers laid one on another with their threads mixed. */
const layered = fc
  .tuple(fc.integer({ min: 1, max: 14 }), fc.integer({ min: 1, max: 14 }), fc.integer({ min: 1, max: 4 }))
  .chain(([rows, columns, layers]) =>
    fc.record({
      ofPick: fc.array(fc.nat({ max: layers - 1 }), { minLength: rows, maxLength: rows }),
      ofEnd: fc.array(fc.nat({ max: layers - 1 }), { minLength: columns, maxLength: columns }),
      toss: fc.array(fc.boolean(), { minLength: rows * columns, maxLength: rows * columns }),
    }),
  )
  .map(({ ofPick, ofEnd, toss }) =>
    fromCells(ofPick.length, ofEnd.length, (pick, end) => {
      // Layer 0 is uppermost: an end of an upper layer lies over every pick of a lower one.
      if (ofEnd[end] !== ofPick[pick]) return ofEnd[end]! < ofPick[pick]!;
      return toss[pick * ofEnd.length + end]!;
    }),
  );

describe("whether the cloth hangs together", () => {
  it("is what a graph library says, layer by layer, for a thousand cloths", () => {
    fc.assert(
      fc.property(fc.oneof(layered, drawdown()), (grid) => {
        const byThread = (a: string[], b: string[]) => (a.join() < b.join() ? -1 : 1);
        expect(layersOf(grid).sort(byThread)).toEqual(componentsOf(grid).sort(byThread));
        const { layers, hangsTogether } = checkGrid(grid).integrity;
        expect(layers).toBe(layersOf(grid).length);
        expect(hangsTogether).toBe(layers === 1);
      }),
      { numRuns: 1000 },
    );
  });

  it("is what the sorted sums say for every (i, j)", () => {
    fc.assert(
      fc.property(layered, (grid) => {
        expect(!checkGrid(grid).integrity.hangsTogether).toBe(fallsApart(grid));
      }),
      { numRuns: 1000 },
    );
  });

  it("names layers from the face to the back: no thread of a lower one lies over a thread of an upper one", () => {
    fc.assert(
      fc.property(layered, (grid) => {
        const integrity = integrityOf(rowCounts(grid), columnCounts(grid));
        const layerOf = (order: Int32Array, before: readonly number[], thread: number) =>
          before.findIndex((_, k) => order.subarray(before[k], before[k + 1]).includes(thread));
        cellsOf(grid).forEach((line, pick) => {
          line.forEach((raised, end) => {
            const ofEnd = layerOf(integrity.ends, integrity.endsBefore, end);
            const ofPick = layerOf(integrity.picks, integrity.picksBefore, pick);
            expect(raised ? ofEnd <= ofPick : ofPick <= ofEnd).toBe(true);
          });
        });
      }),
    );
  });

  // OEIS A283654: matrices without a constant row or column; how many of them fall apart follows by enumeration.
  it.each([
    { side: 2, interlaced: 2, apart: 0 },
    { side: 3, interlaced: 102, apart: 0 },
    { side: 4, interlaced: 22874, apart: 144 },
  ])("of $interlaced weaves of $side ends and picks without a loose thread, $apart fall apart", (row) => {
    let interlaced = 0;
    let apart = 0;
    for (let bits = 0; bits < 2 ** (row.side * row.side); bits++) {
      const grid = fromCells(row.side, row.side, (r, c) => ((bits >>> (r * row.side + c)) & 1) === 1);
      const { looseEnds, loosePicks, hangsTogether } = quick(grid);
      if (looseEnds + loosePicks > 0) continue;
      interlaced++;
      if (!hangsTogether) apart++;
    }
    expect({ interlaced, apart }).toEqual({ interlaced: row.interlaced, apart: row.apart });
  });

  it("a single crossing is two layers, the upper thread and the lower", () => {
    expect(checkGrid(fromText("#")).integrity).toEqual({
      hangsTogether: false,
      layers: 2,
      looseEnds: [1],
      loosePicks: [1],
    });
  });
});

function quick(grid: BitGrid): { looseEnds: number; loosePicks: number; hangsTogether: boolean } {
  const cells = cellsOf(grid);
  const constant = (line: boolean[]) => line.every((state) => state === line[0]);
  return {
    looseEnds: cells[0]!.filter((_, end) => constant(cells.map((line) => line[end]!))).length,
    loosePicks: cells.filter(constant).length,
    hangsTogether: integrityOf(rowCounts(grid), columnCounts(grid)).layers === 1,
  };
}
