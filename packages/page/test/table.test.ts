import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Table } from "../src/document/types.js";
import type { Shape } from "../src/drawing/shape.js";
import { Flow } from "../src/layout/flow.js";
import { layTable } from "../src/layout/table.js";

/** Every text inside a drawing. */
function labels(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((shape) =>
    shape.kind === "group" ? labels(shape.shapes) : shape.kind === "text" ? [shape.text] : [],
  );
}

describe("a table on paper", () => {
  const columns = [{ title: "No.", kind: "head" }, { title: "Text" }] as const;
  const table = (rows: number, narrow = false): Table => ({
    kind: "table",
    id: "t",
    caption: "A table",
    columns,
    rows: Array.from({ length: rows }, (_, i) => [`${i + 1}`, "x"]),
    narrow,
  });
  const cells = (shapes: readonly Shape[]) =>
    labels(shapes)
      .filter((text) => /^\d+$/.test(text))
      .map(Number);

  it("leaves no fewer than three rows behind at a page's end, and loses none", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 90 }),
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        (rows, used) => {
          const flow = new Flow(170, 100, 100 * used);
          layTable(table(rows), flow);
          const pages = flow.pages.map(({ shapes }) => cells(shapes)).filter((page) => page.length > 0);
          expect(pages.flat()).toEqual(Array.from({ length: rows }, (_, i) => i + 1));
          for (const page of pages) expect(page.length).toBeGreaterThanOrEqual(3);
        },
      ),
    );
  });

  it("that is long and may be narrow stands in two columns where few of its rows turn over for it", () => {
    const columnsAt = (words: string, rows: number) => {
      const flow = new Flow(170, 250);
      const long = Array.from({ length: 20 }, (_, i) => [`${i + 1}`, i < rows ? words : "x"]);
      layTable({ ...table(0, true), rows: long }, flow);
      const heads = flow.pages.flatMap(({ shapes }) => labels(shapes)).filter((text) => text === "No.");
      return heads.length;
    };
    const words = "closer than the ground weave allows, and so as firm as a board, with no drape";
    expect(columnsAt(words, 1)).toBe(2);
    expect(columnsAt(words, 20)).toBe(1);
  });

  it("that takes half a page or less is not cut", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.double({ min: 0, max: 0.95, noNaN: true }),
        (rows, used) => {
          const flow = new Flow(170, 100, 100 * used);
          layTable(table(rows), flow);
          expect(flow.pages.filter(({ shapes }) => cells(shapes).length > 0).length).toBe(1);
        },
      ),
    );
  });
});
