import type { Recipe } from "@drawcord/files";
import { followPlan } from "@drawcord/follow";
import { sized } from "@drawcord/units";
import fc from "fast-check";
import { draft } from "../../units/test/arbitraries.js";
import { smallRecipe } from "./recipes.js";

/** A recipe of any draft, woven once to three times. */
export const anyRecipe: fc.Arbitrary<Recipe> = fc
  .record({
    draft: draft().map(sized),
    count: fc.integer({ min: 1, max: 3 }),
    from: fc.constantFrom("left", "right"),
    ownSide: fc.option(fc.constantFrom("left", "right"), { nil: undefined }),
  })
  .map(({ count, draft: any, from, ownSide }) => ({
    ...smallRecipe,
    draft: any,
    pieces: [
      {
        ...smallRecipe.pieces[0]!,
        draft: any,
        count,
        wefts: any.ground.steps.map(({ weft }) => weft ?? "weft"),
      },
    ],
    cloth: {
      firstPickFrom: from as "left" | "right",
      // The ground weft alone may begin on a side of its own.
      ...(ownSide !== undefined && { firstPickOf: { weft: ownSide as "left" | "right" } }),
    },
  }));

/** A plan to follow, and a place in it. */
export const planAndPlace = anyRecipe.chain((recipe) => {
  const plan = followPlan(recipe);
  const picks = plan.pieces[0]!.picks.reduce((sum, row) => sum + row, 0);
  return fc.record({
    recipe: fc.constant(recipe),
    plan: fc.constant(plan),
    place: fc.record({
      turn: fc.integer({ min: 0, max: plan.pieces[0]!.count - 1 }),
      woven: fc.integer({ min: 0, max: picks }),
    }),
  });
});
