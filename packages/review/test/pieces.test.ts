import { readFileSync } from "node:fs";
import { recipeOfPiece, soundRecipe } from "@drawcord/files";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/index.js";

const warp = `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: "X 9 1-8 7-1 9 X" }
lifts: { picks: 4, blocks: { edge: { rows: [9] }, moth: { rows: [1-4, 2-5, 3-6, 4-7, 5-8, 2, 3, 1] }, ground: { rows: [none] } } }
`;
const moths = `{ name: moths, lifts: { order: [edge, moth, edge] } }`;
const reading = (text: string) => soundRecipe(warp + text, "test");

describe("a recipe of several pieces", () => {
  it("of one piece has the report that it has by itself", () => {
    const recipe = reading(`pieces: [${moths}]`);
    expect(checkRecipe(recipe).pieces).toBeUndefined();
  });

  it("has the numbers of each, and a finding names the piece that has it alone", () => {
    const recipe = reading(
      `pieces: [${moths}, { name: plain, lifts: { order: [ground *60] }, limits: { stretch: 40 } }]`,
    );
    const review = checkRecipe(recipe);
    expect(review.pieces?.map(({ name }) => name)).toEqual(["moths", "plain"]);
    for (const { name, size, floats, cut } of review.pieces!) {
      const alone = checkRecipe(recipeOfPiece(recipe, name)!);
      expect({ size, floats, cut }).toEqual({ size: alone.size, floats: alone.floats, cut: alone.cut });
    }
    const stretch = review.findings.find(({ rule }) => rule === "long-stretch");
    expect(stretch).toMatchObject({ piece: "plain" });
    expect(stretch?.message).toMatch(/^plain: /);
    expect(review.places).toHaveLength(review.findings.length);
    const all = review.findings.filter(({ waived }) => waived === undefined);
    expect(Object.values(review.summary).reduce((a, b) => a + b)).toBe(all.length);
  });

  it("judges the floats of a weft by its yarn, where that has a limit of its own", () => {
    const piece = (name: string, weft: string) =>
      `{ name: ${name}, weft: ${weft}, lifts: { order: [moth *4] } }`;
    const text = `pieces: [${piece("fine", "silk")}, ${piece("coarse", "rug")}]
yarns: { silk: { colour: "#c08a24" }, rug: { colour: "#2b3a5e" } }
limits: { float: { warp: 9, weft: 9, silk: 2 } }
`;
    const long = checkRecipe(reading(text)).findings.filter(({ rule }) => rule === "float-length");
    expect(long.length).toBeGreaterThan(0);
    expect(
      long.every((finding) => finding.piece === "fine" && finding.message.includes("in the weft silk")),
    ).toBe(true);
    expect(() => reading(text.replace("silk: 2", "wool: 2"))).toThrow('unknown key "wool" in limits.float');
  });

  it("tells what is the same in some of them once, with their names", () => {
    const limited = (name: string) =>
      `{ name: ${name}, lifts: { order: [ground *60] }, limits: { stretch: 40 } }`;
    const three = reading(`pieces: [${limited("acorns")}, ${moths}, ${limited("stars")}]`);
    const review = checkRecipe(three);
    const stretches = review.findings.filter(({ rule }) => rule === "long-stretch");
    const alone = checkRecipe(recipeOfPiece(three, "stars")!).findings.filter(
      ({ rule }) => rule === "long-stretch",
    );
    expect(stretches.length).toBe(alone.length);
    expect(stretches.length).toBeGreaterThan(0);
    for (const [i, finding] of stretches.entries()) {
      expect(finding).toMatchObject({ piece: "acorns", pieces: ["acorns", "stars"] });
      expect(finding.message).toBe(`acorns and stars: ${alone[i]!.message}`);
    }
    expect(review.summary.warning + review.summary.error + review.summary.note).toBe(
      review.findings.filter(({ waived }) => waived === undefined).length,
    );
  });

  it("tells what is the same in all once, and idle only what no piece uses", () => {
    const capacity = `loom: { pattern-shafts: 4 }\n`;
    const twice = checkRecipe(reading(`${capacity}pieces: [${moths}, ${moths.replace("moths", "again")}]`));
    const once = checkRecipe(reading(`${capacity}pieces: [${moths}]`));
    expect(twice.findings).toEqual(once.findings);
    const parted = reading(
      `pieces: [{ name: a, lifts: { order: [edge *8] } }, { name: b, lifts: { order: [moth] } }]`,
    );
    const idle = (name: string) =>
      checkRecipe(recipeOfPiece(parted, name)!).findings.filter(({ rule }) => rule === "idle-shaft").length;
    expect([idle("a"), idle("b")].every((count) => count > 0)).toBe(true);
    expect(checkRecipe(parted).findings.filter(({ rule }) => rule === "idle-shaft")).toEqual([]);
  });
});

describe("a warp that is wound for several pieces", () => {
  // 40 picks at 10 a cm and 10 % taken up are 44 mm of warp a piece; gaps of 1 cm between two.
  const pieces = `cloth: { picks: 10 per cm, take-up: 10 %, shrinkage: 0 % }
pieces: [${moths}, { name: plain, count: 3, lifts: { order: [ground *10] } }]
`;
  const short = (warp: string) =>
    checkRecipe(
      reading(`${pieces}project: { warp: ${warp}, waste: 10 cm, sampling: 0 cm, gaps: 1 cm }`),
    ).findings.filter(({ rule }) => rule === "short-warp");

  it("is told once when it gives fewer, counted in weaving order", () => {
    expect(short("306 mm")).toEqual([]);
    const [told, ...others] = short("305 mm");
    expect(others).toEqual([]);
    expect(told).toMatchObject({ measured: 3, limit: 4 });
    expect(told?.piece).toBeUndefined();
    expect(told?.message).toBe("the warp of 305 mm gives 3 pieces, and 4 are wanted");
    expect(short("10 cm")[0]).toMatchObject({ measured: 0, limit: 4 });
  });
});

it("a thousand pieces are checked in the time of a thousand, not of their square", () => {
  const many = (count: number) =>
    reading(
      `pieces: [${Array.from({ length: count }, (_, i) => moths.replace("moths", `p${i}`)).join(", ")}]`,
    );
  const recipe = many(1000);
  const before = performance.now();
  const review = checkRecipe(recipe, { causes: false });
  // Well under a second alone; with the text read anew for each piece it takes minutes.
  expect(performance.now() - before).toBeLessThan(15_000);
  expect(review.pieces).toHaveLength(1000);
  expect(review.findings).toEqual(checkRecipe(many(1), { causes: false }).findings);
});

it("the fourth recipe of the winter course is clean in all its pieces", () => {
  const url = new URL("../../../shared/recipes/seasons.recipe.yaml", import.meta.url);
  const review = checkRecipe(soundRecipe(readFileSync(url), "seasons.recipe.yaml"));
  expect(review.findings.filter(({ waived }) => waived === undefined)).toEqual([]);
  // What is carried along the selvedge is said, and accepted with a reason.
  expect(new Set(review.findings.map(({ rule }) => rule))).toEqual(new Set(["carried-weft"]));
  expect(review.pieces).toHaveLength(4);
});
