import { type Recipe, recipeOfPiece } from "@drawcord/files";
import { didYouMean } from "./did-you-mean.js";
import { CliError } from "./error.js";
import { oneLine } from "./printable.js";

/** The option that chooses one of the pieces on a warp. */
export const PIECE_OPTION = {
  type: "string",
  value: "NAME",
  help: "this piece alone, by its name; all in weaving order when not given",
} as const;

/**
 * The recipe of the piece that is asked for alone; the whole recipe where none is.
 * @throws {CliError} `unknown-piece`
 */
export async function chosenPiece(recipe: Recipe, name: string | undefined): Promise<Recipe> {
  if (name === undefined) return recipe;
  const found = recipeOfPiece(recipe, name);
  if (found !== undefined) return found;
  const names = recipe.pieces.map((piece) => piece.name);
  const hint = (await didYouMean(name, names)) || `; its pieces are ${names.map(oneLine).join(", ")}`;
  throw new CliError("unknown-piece", `${recipe.file}: there is no piece "${oneLine(name)}"${hint}`, {
    file: recipe.file,
  });
}
