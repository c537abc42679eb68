/** What there is to see of whatever a file holds. */
import { drawdownOfDraft } from "@drawcord/check";
import type { BitGrid } from "@drawcord/grid";
import { coloursOfRecipe, drawdownOfRecipe, type RecipeColours } from "./draft/from-recipe.js";
import type { Reading } from "./read.js";

/**
 * The cloth of whatever a file holds: a recipe or a draft worked out, and a chart as it is drawn.
 * @param reading as `read` gives it
 * @throws {UnitsError} for a recipe whose cloth is too large
 * @example drawdownIn(read(new TextEncoder().encode("#.\n##\n"), "moth.txt")).columns // 2
 */
export function drawdownIn(reading: Reading): BitGrid {
  switch (reading.kind) {
    case "recipe":
      return drawdownOfRecipe(reading.recipe);
    case "draft":
      return drawdownOfDraft(reading.draft);
    case "chart":
      return reading.chart;
  }
}

/**
 * The title of what a file holds; none of a chart.
 * @param reading as `read` gives it
 * @example titleIn(read(new TextEncoder().encode("#.\n##\n"), "moth.txt")) // undefined
 */
export function titleIn(reading: Reading): string | undefined {
  return reading.kind === "recipe"
    ? reading.recipe.title
    : reading.kind === "draft"
      ? reading.draft.title
      : undefined;
}

/**
 * The colours of the threads, where a file gives them; none where all threads would have one (a warp without its colour is
 * black, a weft white), for that would show nothing.
 * @param reading as `read` gives it
 * @example coloursIn(read(new TextEncoder().encode("#.\n##\n"), "moth.txt")) // {}
 */
export function coloursIn(reading: Reading): RecipeColours {
  const given = givenColours(reading);
  const { warp = ["#000000"], weft = ["#ffffff"] } = given;
  const different = new Set([...warp, ...weft].map((colour) => colour.toLowerCase()));
  return different.size < 2 ? {} : given;
}

function givenColours(reading: Reading): RecipeColours {
  switch (reading.kind) {
    case "recipe":
      return coloursOfRecipe(reading.recipe);
    case "draft": {
      const { warp, weft } = reading.draft;
      return {
        ...(warp.colours === undefined ? {} : { warp: warp.colours }),
        ...(weft.colours === undefined ? {} : { weft: weft.colours }),
      };
    }
    case "chart":
      return {};
  }
}
