/** Changes of a recipe's text that are tried one after another. */
import { FileError } from "../error.js";
import { type Splice, spliced } from "./text-edits.js";
import type { Recipe } from "./types.js";

/** How far a recipe has been brought. */
export interface Made {
  /** What was changed in the text that it was at first. */
  readonly splices: readonly Splice[];
  /** What is read in the text with that changed. */
  readonly recipe: Recipe;
}

/** Reads a text, as the recipe or as that of one of its pieces. */
export type Read = (text: string) => Recipe;

/** The first change of a text that can be read and does what it should. */
export function firstThat(
  tries: Iterable<readonly Splice[]>,
  text: string,
  read: Read,
  does: (draft: Recipe["draft"]) => boolean,
): Made | undefined {
  for (const splices of tries) {
    const recipe = orNothing(() => read(spliced(text, splices)));
    if (recipe !== undefined && does(recipe.draft)) return { splices, recipe };
  }
  return undefined;
}

/** What a function gives, or nothing where a file is not as it must be. */
export function orNothing<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (error instanceof FileError) return undefined;
    throw error;
  }
}
