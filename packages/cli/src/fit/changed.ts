import { FileError, projectOf, type Recipe, type Revision, reviseRecipe, soundRecipe } from "@drawcord/files";
import { type Plan, type Project, plan, YarnError } from "@drawcord/yarn";

/** A recipe with some values changed, and what comes of it. */
export interface Changed {
  readonly text: string;
  readonly recipe: Recipe;
  readonly project: Project;
  readonly plan: Plan;
}

/**
 * A recipe with values changed in its text, comments kept, read and planned anew.
 * @throws {FileError} where the recipe cannot be read with the changes; {YarnError} where it cannot be planned
 */
export function changed(source: Uint8Array | string, file: string, revisions: readonly Revision[]): Changed {
  const { text } = reviseRecipe(source, file, revisions);
  const recipe = soundRecipe(text, file);
  const project = projectOf(recipe);
  return { text, recipe, project, plan: plan(project) };
}

/** A change that is tried: what it makes of the recipe, undefined where it makes none that can be read and planned. */
export function ifReadable<Result>(make: () => Result): Result | undefined {
  try {
    return make();
  } catch (failure) {
    if (failure instanceof FileError || failure instanceof YarnError) return undefined;
    throw failure;
  }
}
