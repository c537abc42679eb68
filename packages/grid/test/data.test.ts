import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  BitGrid,
  blank,
  fromBooleans,
  fromData,
  fromText,
  type GridData,
  setBits,
  tile,
  toBooleans,
  toData,
  toText,
  transpose,
} from "../src/index.js";
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

describe("what is no grid", () => {
  const { columns, rows, words } = fromText("#.");

  it.each([
    ["nothing", undefined, "undefined"],
    ["null", null, "object"],
    ["a text", "#.", "string"],
    ["no rows", { columns, words }, "object"],
    ["no columns", { rows, words }, "object"],
    ["no words", { rows, columns }, "object"],
    ["words that are none", { rows, columns, words: null }, "object"],
  ])("is refused: %s", (_, value, found) => {
    for (const use of [toText, transpose, (grid: BitGrid) => tile(grid, 2, 2)]) {
      expect(() => use(value as BitGrid)).toThrow(
        expect.objectContaining({
          name: "GridError",
          code: "not-a-grid",
          message: "a grid was expected: rows, columns and words",
          facts: { found },
        }),
      );
    }
  });
});

describe("what cannot be drawn or repeated", () => {
  it.each<[string, () => BitGrid, Readonly<Record<string, unknown>>]>([
    ["a sign that is none", () => fromText("##\n#.\n.x"), { line: 3, column: 2, found: "x" }],
    ["an uneven line", () => fromText("##\n#.\n#"), { line: 3, found: 1, expected: 2 }],
    ["an uneven row", () => fromBooleans([[true], [true], []]), { row: 3, found: 0, expected: 1 }],
    ["no rows to repeat", () => tile(blank(0, 3), 1, 1), { rows: 0, columns: 3 }],
    ["no columns to repeat", () => tile(blank(3, 0), 1, 1), { rows: 3, columns: 0 }],
    [
      "words too few",
      () => BitGrid.own(3, 33, new Uint32Array(5)),
      { rows: 3, columns: 33, expected: 6, found: 5 },
    ],
  ])("is refused with its facts: %s", (_, make, facts) => {
    expect(make).toThrow(expect.objectContaining({ facts }));
  });

  it("is repeated over nothing all the same", () => {
    for (const [rows, columns] of [
      [0, 0],
      [0, 4],
      [4, 0],
    ] as const) {
      const { columns: found, rows: high } = tile(blank(0, 3), rows, columns);
      expect([high, found]).toEqual([rows, columns]);
    }
  });

  it("is a text of another kind", () => {
    expect(() => fromText(7 as unknown as string)).toThrow(/a drawing/);
    expect(fromText("#.\n").rows).toBe(1);
    expect(fromText("#.\r\n").rows).toBe(1);
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
