import { LessonError, whyCrossing, whyDocument, whyInWords } from "@drawcord/lesson";
import { pictureToSvg } from "@drawcord/page";
import { expand } from "@drawcord/units";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draft } from "../../units/test/arbitraries.js";
import { exampleRecipe } from "./recipes.js";

describe("how a crossing comes about", () => {
  it("is what the expansion of the whole cloth says, for every crossing", () =>
    fc.assert(
      fc.property(draft(), fc.nat(), fc.nat(), (any, e, p) => {
        const { drawdown, rowOfPick, shaftOfEnd, unitOfEnd } = expand(any);
        const end = e % drawdown.columns;
        const pick = p % drawdown.rows;
        const why = whyCrossing(any, end + 1, pick + 1);
        expect(why.raised).toBe(drawdown.get(pick, end));
        expect(why.shaft).toBe(shaftOfEnd[end]);
        expect(why.unit ?? 0).toBe(unitOfEnd[end]! + 1);
        expect(why.row).toBe(rowOfPick[pick]! + 1);
        expect(rowOfPick.indexOf(why.row - 1) + why.pickOfRow).toBe(pick + 1);
        // The words say the same as the bit.
        expect(whyInWords(why).at(-1)).toContain(why.raised ? "lies over pick" : "lies under pick");
      }),
    ));

  it("tells the four cases of the two harnesses apart", () => {
    const two = {
      ground: { shafts: 4, threading: [1, 2, 3, 4], steps: [{ raise: [1], sink: [2] }] },
      unitEnds: 4,
      threading: [[1], [2]],
      lifts: [[1]],
      picksPerRow: 1,
    };
    const causes = [1, 2, 3, 7].map((end) => whyCrossing(two, end, 1).cause);
    expect(causes).toEqual(["raised", "sunk", "drawn", "left"]);
    expect(whyInWords(whyCrossing(two, 2, 1))).toEqual([
      "End 2 is threaded on ground shaft 2. It is in unit 1, which hangs on pattern shaft 1.",
      "Pick 1 is pick 1 of row 1, and step 1 of the treadling: its treadle raises shaft 1 and sinks shaft 2.",
      "Shaft 2 is among those sunk: the long eye holds the end down, although the row draws the unit.",
      "So end 2 lies under pick 1: the weft shows on the face.",
    ]);
  });

  it("is drawn with the crossing filled or empty as it is", () => {
    const { draft: runner } = exampleRecipe("runner");
    const { drawdown } = expand(runner);
    for (const [end, pick] of [
      [1, 1],
      [41, 77],
      [drawdown.columns, drawdown.rows],
    ] as const) {
      const [part] = whyDocument(runner, end, pick).parts;
      const pictures = part!.blocks.flatMap((block) => (block.kind === "pictures" ? block.pictures : []));
      const [figure] = pictures;
      const grid = new Set(
        [...pictureToSvg(figure!).matchAll(/M(\d+) (\d+)h1v1h-1z/g)].map(([, x, y]) => `${x} ${y}`),
      );
      const firstEnd = Math.max(0, Math.min(end - 7, drawdown.columns - 13));
      const firstPick = Math.max(0, Math.min(pick - 7, drawdown.rows - 13));
      for (let y = 0; y < 13; y++) {
        for (let x = 0; x < 13; x++) {
          expect(grid.has(`${x} ${12 - y}`)).toBe(drawdown.get(firstPick + y, firstEnd + x));
        }
      }
      expect(pictures.length).toBe(4);
    }
  });

  it("refuses a crossing that the cloth has not", () => {
    const { draft: runner } = exampleRecipe("runner");
    for (const [end, pick] of [
      [0, 1],
      [325, 1],
      [1, 1465],
      [1.5, 1],
    ] as const) {
      expect(() => whyCrossing(runner, end, pick)).toThrow(LessonError);
    }
    expect(() => whyCrossing(runner, 325, 1)).toThrow("end 325 is asked for; the cloth has ends 1 to 324");
  });
});
