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
import { cardKey, cardRows } from "../src/card/rows.js";
import { cardSections } from "../src/card/sections.js";
import type { Sheet } from "../src/index.js";
import { makeSheet } from "../src/index.js";
import { windowOf } from "../src/pictures/window.js";
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

describe("a drawdown that no place was asked for", () => {
  it("of the runner shows figure and ground in the same picture, the ground of a hem alone nowhere", () => {
    const woven = weave(exampleRecipe("runner").draft);
    const { ends, picks } = windowOf(woven, undefined, 36, 40);
    let drawn = 0;
    for (let pick = picks.start; pick < picks.end; pick++)
      for (let end = ends.start; end < ends.end; end++) if (woven.expansion.drawn.get(pick, end)) drawn++;
    const share = drawn / ((picks.end - picks.start) * (ends.end - ends.start));
    expect(share).toBeGreaterThan(0.35);
    expect(share).toBeLessThan(0.65);
  });

  it("begins with the unit and the row that are asked for, drawn heavier than ends and picks", () => {
    const sheet = fullSheet(exampleRecipe("runner"), { corner: { unit: 12, row: 143 } });
    const { caption, drawing } = named(sheet, "corner-drawdown");
    expect(caption).toContain("units 12 to ");
    expect(caption).toContain("rows 143 to 152");
    const texts = drawing.shapes.flatMap((shape) => (shape.kind === "text" ? [shape] : []));
    const bold = texts.filter(({ face }) => face === "sans-bold").map(({ text }) => text);
    expect(bold).toEqual(expect.arrayContaining(["12", "13", "143", "152"]));
    const strokes = drawing.shapes.flatMap((shape) => (shape.kind === "path" && shape.stroke ? [shape] : []));
    const heavy = strokes.find(({ stroke }) => stroke === palette.accent)!;
    for (const { width, stroke } of strokes)
      if (stroke !== palette.accent) expect(width!).toBeLessThan(heavy.width!);
  });
});

describe("the chart", () => {
  it("is black where the unit hangs on a shaft that the row draws, from border to border", () => {
    fc.assert(
      fc.property(draft(), (from) => {
        const sheet = makeSheet(bareRecipe(from), { parts: ["chart"] });
        const [one, ...more] = picturesOf(sheet);
        fc.pre(more.length === 0 && !one!.caption.includes("times"));
        const sections = cardSections(cardRows(weave(from), []).map(cardKey));
        const rows = sections.flatMap(({ start, end }) =>
          Array.from({ length: end - start }, (_, i) => start + i),
        );
        const wanted = new Set<string>();
        for (const [at, row] of rows.entries())
          for (const [unit, shafts] of from.threading.entries()) {
            if (shafts.some((shaft) => from.lifts[row]!.includes(shaft)))
              wanted.add(`${unit} ${rows.length - 1 - at}`);
          }
        expect(squaresIn(pictureToSvg(one!), "drawn")).toEqual(wanted);
      }),
      { numRuns: 40 },
    );
  });

  it("too large for a page is cut into sheets that share two units and rows, under a map of them", () => {
    const lifts = Array.from({ length: 260 }, (_, row) => [((row * row * 7) % 150) + 1]);
    const threading = Array.from({ length: 150 }, (_, unit) => [((unit * 11) % 150) + 1]);
    const big = { ...smallDraft, threading, lifts };
    const [map, ...sheets] = picturesOf(makeSheet(bareRecipe(big), { parts: ["chart"] }));
    expect(map!.id).toBe("chart-map");
    expect(sheets.length).toBeGreaterThan(3);
    const spans = sheets.map(({ caption }) =>
      /units (\d+) to (\d+), rows (\d+) to (\d+)/.exec(caption)!.slice(1).map(Number),
    );
    const drawn = new Set<string>();
    for (const [i, sheet] of sheets.entries()) {
      const [unit, , row, lastRow] = spans[i] as [number, number, number, number];
      for (const square of squaresIn(pictureToSvg(sheet), "drawn")) {
        const [column, down] = square.split(" ").map(Number) as [number, number];
        drawn.add(`${unit + column} ${lastRow - down}`);
      }
      if (unit > 1) expect(spans.some((other) => other[1] === unit + 1)).toBe(true);
      if (row > 1) expect(spans.some((other) => other[3] === row + 1)).toBe(true);
    }
    const wanted = new Set<string>();
    for (const [row, lift] of lifts.entries())
      for (const [unit, [shaft]] of threading.entries())
        if (lift[0] === shaft) wanted.add(`${unit + 1} ${row + 1}`);
    expect(drawn).toEqual(wanted);
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
    expect(placed.length).toBeGreaterThan(20);
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
    expect(coloured.length).toBeGreaterThan(20);
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
