import type { Recipe } from "@drawcord/files";
import { toHtml } from "@drawcord/page";
import { makeSheet, shortParts } from "@drawcord/sheet";

/** The sheet as the command makes it where nothing else is asked for. */
const USUAL = { parts: shortParts, units: "metric", reading: "right-to-left" } as const;

/**
 * The sheet of a recipe, as a document.
 * @param recipe a sound recipe
 */
export function usualSheet(recipe: Recipe) {
  return makeSheet(recipe, USUAL);
}

/**
 * The sheet of a recipe as one page that needs nothing else.
 * @param recipe a sound recipe
 */
export function sheetHtml(recipe: Recipe): string {
  return toHtml(usualSheet(recipe), { paper: "a4" });
}
