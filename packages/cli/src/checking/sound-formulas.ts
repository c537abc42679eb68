import { ownNumbers, type Recipe } from "@drawcord/files";
import { YarnError } from "@drawcord/yarn";

/**
 * Sees to it that the formulas of a recipe can be read and worked out. Where its project cannot be, a rule says so.
 * @throws {FileError} `bad-notation` with its place
 */
export async function soundFormulas(recipe: Recipe): Promise<void> {
  try {
    await ownNumbers(recipe);
  } catch (failure) {
    if (!(failure instanceof YarnError)) throw failure;
  }
}
