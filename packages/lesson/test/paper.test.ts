import { LessonError, pieceLabel, tickList, unitPaper, wrapCard } from "@drawcord/lesson";
import { type Document, type Drawing, plainText } from "@drawcord/page";
import { expand, parseShafts } from "@drawcord/units";
import { describe, expect, it } from "vitest";
import { exampleRecipe } from "./recipes.js";

function drawingOf(document: Document): Drawing {
  const block = document.parts.flatMap(({ blocks }) => blocks).find(({ kind }) => kind === "pictures");
  if (block?.kind !== "pictures") throw new Error("there is no picture");
  return block.pictures[0]!.drawing;
}

const texts = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));

describe("unit paper", () => {
  it.each([
    [{ unitEnds: 4, rowPicks: 4, sett: 12, picks: 12 }, 4],
    [{ unitEnds: 4, rowPicks: 4, sett: 12, picks: 18 }, 2.667],
    [{ unitEnds: 8, rowPicks: 4, sett: 20, picks: 16 }, 2.5],
  ])("is ruled in the true proportion of the sett: %j", (options, high) => {
    const { shapes, height } = drawingOf(unitPaper({ ...options, width: 4 }));
    const [thin, heavy] = shapes;
    if (thin?.kind !== "path" || heavy?.kind !== "path") throw new Error("there are no lines");
    const all = `${thin.d}${heavy.d}`;
    const across = [...all.matchAll(/M8 ([\d.]+)h/g)].map(([, y]) => Number(y)).sort((a, b) => a - b);
    const down = [...all.matchAll(/M([\d.]+) 0v/g)].map(([, x]) => Number(x)).sort((a, b) => a - b);
    expect(across[1]! - across[0]!).toBeCloseTo(high, 2);
    expect(down[1]! - down[0]!).toBeCloseTo(4, 3);
    // A tenth line is heavy, counted from the foot where weaving begins.
    const heavies = [...heavy.d.matchAll(/M8 ([\d.]+)h/g)].map(([, y]) => Number(y)).sort((a, b) => b - a);
    expect(heavies[0]! - heavies[1]!).toBeCloseTo(10 * high, 1);
    expect(height).toBeLessThanOrEqual(205);
  });

  it("refuses squares that no paper has", () => {
    const odd = { unitEnds: 4, rowPicks: 4, sett: 12, picks: 1000 };
    expect(() => unitPaper(odd)).toThrow(LessonError);
    expect(() => unitPaper(odd)).toThrow("a square of the paper is 4.0 by 0.0 mm");
  });
});

describe("a wrap card", () => {
  it("names its yarn, and its notches are 5 cm apart", () => {
    const drawing = drawingOf(wrapCard("weft: Nm 16/2, linen"));
    expect(texts(drawing)).toContain("weft: Nm 16/2, linen");
    const notches = drawing.shapes.flatMap((shape) =>
      shape.kind === "path" ? [...shape.d.matchAll(/^M([\d.]+) 0v6$/g)].map(([, x]) => Number(x)) : [],
    );
    expect(notches[1]! - notches[0]!).toBe(50);
  });
});

describe("a list to tick", () => {
  it.each(["runner", "napkin", "band"])("threads every end of the %s as the cloth is woven", (name) => {
    const recipe = exampleRecipe(name);
    const { shaftOfEnd, unitOfEnd } = expand(recipe.draft);
    const [table] = tickList(recipe).parts[0]!.blocks;
    if (table?.kind !== "table") throw new Error("there is no table");
    const ends: string[] = [];
    for (const row of table.rows) {
      const [, , shafts, handle] = row.map(plainText);
      const hung = handle === "none" ? [] : parseShafts(handle!);
      for (const shaft of shafts!.split(" ")) ends.push(`${shaft} on ${hung.join("+")}`);
    }
    const woven = [...unitOfEnd].map(
      (unit, end) => `${shaftOfEnd[end]} on ${(recipe.draft.threading[unit] ?? []).join("+")}`,
    );
    expect(ends).toEqual(woven);
    expect(table.columns.at(-1)?.kind).toBe("tick");
  });
});

describe("a label", () => {
  it("says what the weaver states, and leaves lines for the rest", () => {
    const recipe = exampleRecipe("runner");
    const drawing = drawingOf(pieceLabel(recipe, { width: "26 cm", care: "wash at 40 °C" }));
    const said = texts(drawing);
    expect(said).toContain("26 cm");
    expect(said).toContain("wash at 40 °C");
    expect(said).toContain("cottolin, linen");
    const lines = drawing.shapes.filter((shape) => shape.kind === "path").length;
    expect(lines).toBe(2);
  });
});
