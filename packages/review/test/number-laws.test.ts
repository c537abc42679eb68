/** Laws of the numbers of a recipe that hold whatever they are. */
import { projectOf, type Recipe, reviseRecipe, soundRecipe } from "@drawcord/files";
import { metric, plan, planNumbers } from "@drawcord/yarn";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkRecipe } from "../src/check-recipe.js";
import { statedValues } from "../src/fill-stated.js";

interface Cloth {
  readonly units: number;
  readonly rows: number;
  readonly sett: number;
  readonly picks: number;
  readonly drawIn: number;
  readonly takeUp: number;
  readonly shrinkage: number;
  readonly pieces: number;
  readonly hems: number;
  readonly waste: number;
}

const cloths = fc.record<Cloth>({
  units: fc.integer({ min: 2, max: 40 }),
  rows: fc.integer({ min: 20, max: 60 }),
  sett: fc.integer({ min: 40, max: 240 }).map((tenths) => tenths / 10),
  picks: fc.integer({ min: 40, max: 240 }).map((tenths) => tenths / 10),
  drawIn: fc.integer({ min: 0, max: 15 }),
  takeUp: fc.integer({ min: 0, max: 15 }),
  shrinkage: fc.integer({ min: 0, max: 15 }),
  pieces: fc.integer({ min: 1, max: 9 }),
  hems: fc.integer({ min: 0, max: 8 }),
  waste: fc.integer({ min: 20, max: 120 }),
});

/** A recipe of a cloth, in centimetres or in inches, its numbers written as exactly as they can be. */
function recipeOf(cloth: Cloth, system: "cm" | "in"): string {
  const long = (mm: number) => (system === "cm" ? `${mm / 10} cm` : `${(mm / 25.4).toFixed(9)} in`);
  const dense = (perCm: number) =>
    system === "cm" ? `${perCm} per cm` : `${(perCm * 2.54).toFixed(9)} per inch`;
  return `recipe: 1
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: 1*${cloth.units} }
lifts: { picks: 4, rows: [1*${cloth.rows}] }
yarns:
  warp: { count: 20/2 Ne, fibre: cotton }
  weft: { count: 10/2 Ne, fibre: cotton }
cloth:
  sett: ${dense(cloth.sett)}
  picks: ${dense(cloth.picks)}
  draw-in: ${cloth.drawIn} %
  take-up: ${cloth.takeUp} %
  shrinkage: ${cloth.shrinkage} %
project: { pieces: ${cloth.pieces}, hems: ${long(cloth.hems)}, waste: ${long(10 * cloth.waste)} }
`;
}

const read = (text: string): Recipe => soundRecipe(text, "law.recipe.yaml");

const few = { numRuns: 12 };

describe("the numbers of a recipe", () => {
  it("pass the check of stated numbers once they are filled in", () => {
    fc.assert(
      fc.property(cloths, fc.constantFrom("cm" as const, "in" as const), (cloth, system) => {
        const text = recipeOf(cloth, system);
        const stated = Object.entries(statedValues(read(text)));
        expect(stated.length).toBeGreaterThan(10);
        const filled = reviseRecipe(
          text,
          "law.recipe.yaml",
          stated.map(([name, value]) => ({ path: ["stated", name], value })),
        );
        const { findings } = checkRecipe(read(filled.text), { rules: ["stated-number"] });
        expect(findings).toEqual([]);
      }),
      few,
    );
  });

  it("are the same in centimetres and in inches", () => {
    fc.assert(
      fc.property(cloths, (cloth) => {
        const [one, other] = (["cm", "in"] as const).map((system) =>
          planNumbers(plan(projectOf(read(recipeOf(cloth, system))))).map(
            ({ name, value }) => [name, metric(value).value] as const,
          ),
        ) as [(readonly [string, number])[], (readonly [string, number])[]];
        expect(other.map(([name]) => name)).toEqual(one.map(([name]) => name));
        one.forEach(([name, value], i) => {
          expect(Math.abs(other[i]![1] - value), name).toBeLessThanOrEqual(
            1e-6 * Math.max(1, Math.abs(value)),
          );
        });
      }),
      few,
    );
  });
});
