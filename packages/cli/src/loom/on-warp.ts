/** Which of the pieces on a warp a row, a pick or a length from its beginning falls in. */
import { many } from "@drawcord/base";
import type { Recipe, RecipePiece } from "@drawcord/files";
import { draftSize } from "@drawcord/units";
import { CliError } from "../error.js";
import { type AskedPlace, picksInLength, saidOf } from "./whereabouts.js";

/** A place in one of the pieces that are woven. */
export interface PlaceOnWarp {
  readonly piece: RecipePiece;
  /** How many of its design are done before it. */
  readonly nth: number;
  /** The place within it. */
  readonly within: AskedPlace;
}

/**
 * The piece that a place on the warp falls in, through all pieces as they are woven, each as often as it is.
 * @throws {CliError} `outside` past the last piece; as `picksInLength`
 */
export function onWarp(recipe: Recipe, asked: AskedPlace): PlaceOnWarp {
  const by = asked.by === "row" ? "row" : "pick";
  let left = asked.by === "length" ? picksInLength(recipe, asked.length) : asked.number;
  for (const piece of recipe.pieces) {
    const { picks, rows } = draftSize(piece.draft);
    const size = by === "row" ? rows : picks;
    const nth = Math.min(piece.count, Math.ceil(left / size) - 1);
    if (nth < piece.count) return { piece, nth, within: { by, number: left - nth * size } };
    left -= piece.count * size;
  }
  const sizes = recipe.pieces.map(({ count, draft }) => ({ count, ...draftSize(draft) }));
  const rows = sizes.reduce((sum, one) => sum + one.count * one.rows, 0);
  const picks = sizes.reduce((sum, one) => sum + one.count * one.picks, 0);
  const sentence = `${recipe.file}: all that is woven has ${many(rows, "row")} and ${many(picks, "pick")}; ${saidOf(asked)} is not among them`;
  throw new CliError("outside", sentence, { file: recipe.file });
}
