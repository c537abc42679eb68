import { plan, toMetric } from "@drawcord/yarn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { projectOf, soundRecipe } from "../../src/index.js";

const recipeOf = (pieces: readonly string[]) =>
  soundRecipe(
    `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 9 1-4 3-1 9 X }
lifts: { picks: 4, blocks: { hem: { rows: [none] }, moth: { rows: [1, 2, 3] } } }
yarns: { warp: { count: 20/2 Ne }, weft: { count: 20/2 Ne }, gold: { count: Nm 20/2 } }
colours: { warp: gold*4 warp*28 gold*4 }
cloth: { sett: 10 per cm, picks: 10 per cm, take-up: 10 %, shrinkage: 8 % }
project: { hems: 4 cm, gaps: 2 cm, fringe: 0 cm, waste: 60 cm, sampling: 0 cm }
pieces:
${pieces.join("\n")}
`,
    "test",
  );

const piece = fc.record({
  count: fc.integer({ min: 1, max: 4 }),
  length: fc.integer({ min: 8, max: 90 }),
  weft: fc.constantFrom("weft", "gold", "weft*3 gold*2"),
});

describe("the plan of several pieces", () => {
  it("has as many picks of each as its lifts weave, to less than a repeat of the block that fills it", () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 2, maxLength: 3 }), (asked) => {
        const recipe = recipeOf(
          asked.map(
            ({ count, length, weft }, i) =>
              `  - { name: p${i}, count: ${count}, length: ${length} cm, weft: "${weft}", lifts: { order: [hem, moth *fill, hem] } }`,
          ),
        );
        const { woven } = plan(projectOf(recipe));
        recipe.pieces.forEach(({ draft, over, wantedRows }, i) => {
          expect(draft.lifts.length + over).toBe(wantedRows);
          expect(woven[i]!.over ?? 0).toBe(over);
          expect(Math.abs(woven[i]!.picks.value - 4 * wantedRows!)).toBeLessThanOrEqual(2);
        });
      }),
      { numRuns: 40 },
    );
  });

  it("has yarns by colour that sum to the whole", () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 2, maxLength: 3 }), (asked) => {
        const found = plan(
          projectOf(
            recipeOf(
              asked.map(
                ({ count, length, weft }, i) =>
                  `  - { name: p${i}, count: ${count}, length: ${length} cm, weft: "${weft}", lifts: { order: [moth *fill] } }`,
              ),
            ),
          ),
        );
        const metres = (name: string) =>
          found.woven
            .flatMap(({ wefts }) => wefts)
            .filter((weft) => weft.name === name)
            .reduce((sum, { length }) => sum + toMetric(length).value, 0);
        for (const { name, length } of found.weftYarn) {
          expect(metres(name)).toBeCloseTo(toMetric(length).value, 6);
        }
      }),
      { numRuns: 40 },
    );
  });
});
