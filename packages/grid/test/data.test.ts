import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BitGrid, fromData, fromText, type GridData, setBits, toBooleans, toData } from "../src/index.js";
import { cells, gridOf } from "./arbitraries.js";

describe("a grid as data", () => {
  it("comes back over the border of a worker, as data or as the clone of itself", () => {
    fc.assert(
      fc.property(cells(), (twin) => {
        const grid = gridOf(twin);
        expect(fromData(structuredClone(toData(grid))).equals(grid)).toBe(true);
        expect(fromData(structuredClone(grid)).equals(grid)).toBe(true);
        const { rows, columns, words } = toData(grid);
        expect(fromData({ rows, columns, words: Array.from(words) }).equals(grid)).toBe(true);
      }),
    );
  });

  it("copies no words where they are a Uint32Array, and drops bits past the last column", () => {
    const words = Uint32Array.of(0xff);
    const grid = fromData({ rows: 1, columns: 3, words });
    expect(grid.words).toBe(words);
    expect(words[0]).toBe(0b111);
    expect(toData(grid).words).toBe(words);
  });

  it("is refused where it is none", () => {
    for (const data of [undefined, null, {}, { rows: 1, columns: 1 }]) {
      expect(() => fromData(data as GridData)).toThrow(
        expect.objectContaining({
          name: "GridError",
          code: "not-a-grid",
          message: "rows, columns and words were expected; there are no words",
        }),
      );
    }
    expect(() => fromData({ rows: 1, columns: 33, words: [1] })).toThrow(
      expect.objectContaining({ code: "wrong-length" }),
    );
    expect(() => fromData({ rows: -1, columns: 33, words: [1] })).toThrow(
      expect.objectContaining({ code: "bad-size" }),
    );
  });
});

describe("a stretch of bits", () => {
  it("is raised from its start to the one before its end, and nothing else is touched", () => {
    const side = fc.nat({ max: 100 });
    fc.assert(
      fc.property(
        side,
        side,
        fc.nat({ max: 2 }),
        cells(fc.constant(3), fc.constant(101)),
        (a, b, row, twin) => {
          const [start, end] = [Math.min(a, b), Math.max(a, b)];
          const grid = gridOf(twin);
          const words = Uint32Array.from(grid.words);
          setBits(words, row * grid.stride, start, end);
          const wanted = twin.cells.map((cells, r) =>
            cells.map((cell, column) => cell || (r === row && column >= start && column < end)),
          );
          expect(toBooleans(BitGrid.own(3, 101, words))).toEqual(wanted);
        },
      ),
    );
  });

  it("of no length raises nothing", () => {
    const words = new Uint32Array(1);
    setBits(words, 0, 3, 3);
    expect(words[0]).toBe(0);
    expect(BitGrid.own(1, 2, words).equals(fromText(".."))).toBe(true);
  });
});
