import { listed } from "@drawcord/base";
import { projectOf, type Recipe, type RecipePiece, recipeOfPiece } from "@drawcord/files";
import type { Project } from "@drawcord/yarn";
import { chosenPiece } from "../chosen-piece.js";
import { CliError } from "../error.js";
import { oneLine } from "../printable.js";

/**
 * The piece of a recipe that is to be fitted: the one named, or the only one there is.
 * @throws {CliError} `unknown-piece`; `no-fit` where there are several and none is named
 */
export async function pieceToFit(recipe: Recipe, name: string | undefined): Promise<RecipePiece> {
  const { file, pieces } = recipe;
  const found = name === undefined ? pieces : (await chosenPiece(recipe, name)).pieces;
  if (found.length === 1) return found[0]!;
  const names = listed(
    pieces.map((piece) => oneLine(piece.name)),
    "or",
  );
  throw new CliError("no-fit", `${file}: of several pieces one is fitted; name it with --piece: ${names}`, {
    file,
  });
}

/** The project of one piece as if nothing else were woven on its warp. */
export function projectOfPiece(recipe: Recipe, { name }: RecipePiece): Project {
  return projectOf(recipeOfPiece(recipe, name) ?? recipe);
}

/** Where the number of a piece stands in its recipe. */
export function countPath({ path }: RecipePiece): readonly (string | number)[] {
  return path.length > 0 ? [...path, "count"] : ["project", "pieces"];
}
