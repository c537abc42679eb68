import { drawdownOf, weaveOf } from "@drawcord/ground";
import { convert, firmness, interlacing, settByRoot } from "@drawcord/yarn";
import { describe, expect, it } from "vitest";

/** Setts and firmness of weaves as a ground harness lays them out: R and I are counted on the weave itself. */

const inch = (weave: string, yarn: string, k: number): number =>
  convert(settByRoot(yarn, interlacing(drawdownOf(weaveOf(weave))).warp, { k }), "per inch").value;

describe("setts by the root rule", () => {
  // J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909, pp. 334 and 338; k is 0.95 for cotton, p. 337.
  it.each([
    ["plain", "32 Ne", 0.95, 78],
    ["twill 2/1", "24 Ne", 0.95, 81],
  ])("%s in %s: Taylor has %d", (weave, yarn, k, printed) => {
    expect(Math.round(inch(weave, yarn, k))).toBe(printed);
  });

  // Derived, with k = 0.90 on 8400 yards a pound.
  it.each([
    ["plain", 41.2],
    ["twill 1/3", 55],
    ["broken twill", 55],
  ])("%s in 20/2 cotton: %d", (weave, derived) => {
    expect(inch(weave, "20/2 Ne", 0.9)).toBeCloseTo(derived, 1);
  });
});

// Derived from the definitions (Morino, Matsudaira and Furutani, Textile Research Journal 75, 2005, from memory).
it.each([
  ["plain", 1, 2, 0, 1],
  ["twill 2/2", 2, 1, 1, 2],
  ["twill 1/3", 2, 1, 1, 3],
  ["broken twill", 2, 1, 1, 3],
  ["satin 5 step 2", 2.5, 0.8, 1.2, 4],
  ["satin 8 step 3", 4, 0.5, 1.5, 7],
])("%s: mean float %d, crossings %d, floating %d, longest %d", (weave, F, CFF, FYF, longest) => {
  const found = firmness(drawdownOf(weaveOf(weave)));
  expect(found.meanFloat.value).toBeCloseTo(F, 12);
  expect(found.crossingOver.value).toBeCloseTo(CFF, 12);
  expect(found.floatingYarn.value).toBeCloseTo(FYF, 12);
  expect(found.longestFloat).toBe(longest);
});
