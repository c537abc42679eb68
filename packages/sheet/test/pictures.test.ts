import { type BitGrid, complement, crop, mirror } from "@drawcord/grid";
import { pictureToSvg } from "@drawcord/page";
import fc from "fast-check";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { plainText } from "../../page/src/document/text.js";
import type { Picture, Table } from "../../page/src/document/types.js";
import { palette } from "../../page/src/drawing/palette.js";
import type { RectShape } from "../../page/src/drawing/shape.js";
import { draft } from "../../units/test/arbitraries.js";
import type { Sheet } from "../src/index.js";

import { weave } from "../src/woven.js";
import { bareRecipe, exampleRecipe, fullSheet, smallDraft } from "./recipes.js";

function picturesOf(sheet: Sheet): Picture[] {
  return sheet.parts.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures : [])),
  );
}

const named = (sheet: Sheet, id: string) => picturesOf(sheet).find((picture) => picture.id === id)!;

interface SvgPath {
  readonly "@_d": string;
  readonly "@_data-role"?: string;
  readonly "@_transform"?: string;
}

/** The squares that the paths of one role cover in an SVG file, read with a general XML parser: `x y` from the top left. */
function squaresIn(svg: string, role: string): Set<string> {
  expect(XMLValidator.validate(svg)).toBe(true);
  const parser = new XMLParser({
    ignoreAttributes: false,
    isArray: (name) => name === "path" || name === "g",
  });
  const paths: SvgPath[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    for (const [tag, value] of Object.entries(node)) {
      if (tag === "path") paths.push(...(value as SvgPath[]));
      else if (Array.isArray(value)) value.forEach(visit);
      else visit(value);
    }
  };
  visit(parser.parse(svg));
  const squares = new Set<string>();
  for (const path of paths.filter((one) => one["@_data-role"] === role)) {
    for (const [, x, y, width, height] of path["@_d"].matchAll(/M(\d+) (\d+)h(\d+)v(\d+)h-\d+z/g)) {
      for (let row = 0; row < Number(height); row++) {
        for (let column = 0; column < Number(width); column++)
          squares.add(`${Number(x) + column} ${Number(y) + row}`);
      }
    }
  }
  return squares;
}

/** The same of a grid. */
function squaresOfGrid(grid: BitGrid): Set<string> {
  const squares = new Set<string>();
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      if (grid.get(row, column)) squares.add(`${column} ${grid.rows - 1 - row}`);
    }
  }
  return squares;
}

describe("the picture of one repeat", () => {
  it.each(["runner", "band"] as const)(
    "of the %s shows every raised end of the face, and of the back",
    (name) => {
      const recipe = exampleRecipe(name);
      const sheet = fullSheet(recipe);
      const { expansion, repeat, unitSpans, rowSpans } = weave(recipe.draft);
      const first = { row: rowSpans[repeat.rows.start]!.start, column: unitSpans[repeat.units.start]!.start };
      const grid = crop(expansion.drawdown, {
        ...first,
        rows: rowSpans[repeat.rows.end - 1]!.end - first.row,
        columns: unitSpans[repeat.units.end - 1]!.end - first.column,
      });
      expect(grid.rows * grid.columns).toBeGreaterThan(1000);
      const face = squaresIn(pictureToSvg(named(sheet, "repeat-face")), "raised");
      expect(face).toEqual(squaresOfGrid(grid));
      const back = squaresIn(pictureToSvg(named(sheet, "repeat-back")), "raised");
      expect(back).toEqual(squaresOfGrid(mirror(complement(grid))));
    },
  );
});

describe("the corner", () => {
  it("is the drawdown, square for square, whichever corner it is", () => {
    const corners = ["bottom-left", "bottom-right", "top-left", "top-right"] as const;
    fc.assert(
      fc.property(draft(), fc.constantFrom(...corners), (from, corner) => {
        const sheet = fullSheet(bareRecipe(from), { corner });
        const { caption } = named(sheet, "corner-drawdown");
        const [, firstEnd, lastEnd, firstPick, lastPick] = /ends (\d+) to (\d+), picks (\d+) to (\d+)/
          .exec(caption)!
          .map(Number) as [number, number, number, number, number];
        const { drawdown } = weave(from).expansion;
        expect(corner.endsWith("left") ? firstEnd : drawdown.columns).toBe(
          corner.endsWith("left") ? 1 : lastEnd,
        );
        expect(corner.startsWith("bottom") ? firstPick : drawdown.rows).toBe(
          corner.startsWith("bottom") ? 1 : lastPick,
        );
        const grid = crop(drawdown, {
          row: firstPick - 1,
          column: firstEnd - 1,
          rows: lastPick - firstPick + 1,
          columns: lastEnd - firstEnd + 1,
        });
        expect(squaresIn(pictureToSvg(named(sheet, "corner-drawdown")), "raised")).toEqual(
          squaresOfGrid(grid),
        );
      }),
      { numRuns: 60 },
    );
  });
});

describe("the chart", () => {
  it("is black where the unit hangs on a shaft that the row draws", () => {
    const sheet = fullSheet(bareRecipe(smallDraft));
    const { repeat } = weave(smallDraft);
    const wanted = new Set<string>();
    for (let row = repeat.rows.start; row < repeat.rows.end; row++) {
      for (let unit = repeat.units.start; unit < repeat.units.end; unit++) {
        const drawn = smallDraft.threading[unit]!.some((shaft) => smallDraft.lifts[row]!.includes(shaft));
        if (drawn) wanted.add(`${unit - repeat.units.start} ${repeat.rows.end - 1 - row}`);
      }
    }
    expect(wanted.size).toBeGreaterThan(0);
    expect(squaresIn(pictureToSvg(named(sheet, "chart-1")), "drawn")).toEqual(wanted);
  });

  it("of the napkin is its picture of 88 by 88 with the border of one row at the foot", () => {
    const sheet = fullSheet(exampleRecipe("napkin"));
    const squares = squaresIn(pictureToSvg(named(sheet, "chart-1")), "drawn");
    const row = (number: number) =>
      [...squares].filter((square) => square.endsWith(` ${88 - number}`)).length;
    expect(row(1)).toBe(2);
    expect(row(2)).toBe(88);
  });
});

describe("every picture", () => {
  it("is well-formed XML with a text of its own, whatever the draft", () => {
    fc.assert(
      fc.property(draft(), (from) => {
        for (const picture of picturesOf(fullSheet(bareRecipe(from)))) {
          const svg = pictureToSvg(picture);
          expect(XMLValidator.validate(svg)).toBe(true);
          expect(svg).toContain('role="img"');
          expect(picture.alt.length).toBeGreaterThan(20);
          expect(svg).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("the findings of the faulty runner on the figure", () => {
  const sheet = fullSheet(exampleRecipe("faulty-runner"));
  const { shapes } = named(sheet, "findings-picture").drawing;
  const badges = shapes.filter(
    (shape) => shape.kind === "rect" && shape.fill === palette.paper,
  ) as RectShape[];
  const numbers = shapes.flatMap((shape) =>
    shape.kind === "text" && /^\d+$/.test(shape.text) ? [shape] : [],
  );

  it("stand there with every number of the list that has a place, whatever their weight", () => {
    const list = sheet.parts
      .flatMap(({ blocks }) => blocks)
      .find((block) => block.kind === "table" && block.id === "findings-list") as Table;
    const placed = list.rows.filter((row) => /: (ends?|picks?) \d/.test(plainText(row[3]!)));
    expect(placed.length).toBeGreaterThan(30);
    const found = numbers.map(({ text }) => text).sort((a, b) => Number(a) - Number(b));
    expect(found).toEqual(placed.map((row) => plainText(row[0]!)));
  });

  it("hide no number behind another, and let none leave the picture", () => {
    const { width, height } = named(sheet, "findings-picture").drawing;
    expect(badges.length).toBe(numbers.length);
    for (const [i, a] of badges.entries()) {
      expect(a.x >= 0 && a.y >= 0 && a.x + a.width <= width && a.y + a.height <= height).toBe(true);
      for (const b of badges.slice(i + 1)) {
        const apart =
          a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
        expect(apart, `${a.x} ${a.y} and ${b.x} ${b.y}`).toBe(true);
      }
    }
  });

  it("are framed with an edge of ink under the colour of their weight", () => {
    const frames = shapes.filter((shape) => shape.kind === "rect" && shape.fill === undefined) as RectShape[];
    const coloured = frames.filter(({ stroke }) =>
      [palette.error, palette.warning, palette.note].some((colour) => colour === stroke),
    );
    expect(coloured.length).toBeGreaterThan(30);
    for (const { x, y, width, height, strokeWidth } of coloured) {
      const under = frames.find(
        (one) =>
          one.stroke === palette.ink &&
          one.x === x &&
          one.y === y &&
          one.width === width &&
          one.height === height,
      );
      expect(under!.strokeWidth).toBeGreaterThan(strokeWidth!);
    }
  });
});
