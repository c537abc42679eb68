import { blank, fromCells, toText } from "@drawcord/grid";
import { array, assert, boolean, integer, property, tuple } from "fast-check";
import { describe, expect, it } from "vitest";
import { pickLines, textDrawing } from "../src/drawing.js";

/** Grids with sides about the edges of a byte and of a word. */
const grids = tuple(integer({ min: 0, max: 9 }), integer({ min: 1, max: 70 })).chain(([rows, columns]) =>
  array(boolean(), { minLength: rows * columns, maxLength: rows * columns }).map((cells) =>
    fromCells(rows, columns, (row, column) => cells[row * columns + column]!),
  ),
);

describe("drawing a cloth piece by piece", () => {
  it("as text is the text of the whole", () => {
    assert(
      property(grids, (grid) => {
        expect([...textDrawing(grid)].join("")).toBe(grid.rows === 0 ? "" : `${toText(grid)}\n`);
        expect([...pickLines(grid)].reverse().join("\n")).toBe(toText(grid));
      }),
    );
  });

  it("takes a large cloth in bands, in their order", () => {
    const grid = fromCells(300, 7000, (row, column) => (row * 7 + column) % 11 === 0);
    const pieces = [...textDrawing(grid)];
    expect(pieces.length).toBeGreaterThan(1);
    expect(pieces.join("") === `${toText(grid)}\n`).toBe(true);
  });

  it("of no picks is empty", () => {
    expect([...textDrawing(blank(0, 5))]).toEqual([]);
  });
});
