import type { RuleName } from "@drawcord/check";
import type { Recipe, Revision } from "@drawcord/files";
import { checkRecipe, restated } from "@drawcord/review";
import { changed } from "./changed.js";
import type { Fit } from "./fit.js";

/** A fit as it is written, and what it would bring. */
export interface FittedRecipe extends Fit {
  readonly text: string;
  /** What the checker would find that it does not find now, a sentence each; none in a recipe that passes. */
  readonly finds: readonly string[];
}

/** A fit made in its recipe, the numbers that it states and that were right stated anew. */
export function fitted(source: Uint8Array, recipe: Recipe, fit: Fit): FittedRecipe {
  const made = changed(source, recipe.file, fit.revisions);
  const stated = Object.entries(restated(recipe, made.recipe)).map(
    ([name, value]): Revision => ({ path: ["stated", name], value }),
  );
  const revisions = [...fit.revisions, ...stated];
  const whole = stated.length === 0 ? made : changed(source, recipe.file, revisions);
  return { ...fit, revisions, text: whole.text, finds: newFindings(recipe, whole.recipe) };
}

/** What is found in a recipe by rules that found nothing in it as it was; notes are no more than told. */
export function newFindings(before: Recipe, after: Recipe, rules?: readonly RuleName[]): readonly string[] {
  const found = (recipe: Recipe) =>
    checkRecipe(recipe, { causes: false, ...(rules && { rules }) }).findings.filter(
      ({ severity, waived }) => severity !== "note" && waived === undefined,
    );
  const known = new Set(found(before).map(({ rule }) => rule));
  return found(after).flatMap(({ message, rule }) => (known.has(rule) ? [] : [message]));
}
