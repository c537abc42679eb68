/** Brings other lifts of all pieces, over another threading, back into the text of their recipe. */
import { commonSize, printThreading } from "@drawcord/units";
import { readText } from "../text.js";
import { pieceAlone } from "./pieces/alone.js";
import { standsInPieces } from "./pieces/write.js";
import { withYarnsUsed } from "./pieces/yarns-used.js";
import { soundRecipe } from "./read.js";
import { rethreaded } from "./rethread/rethreaded.js";
import { reviseRecipe, valueIn } from "./revise.js";
import { reviseDraft } from "./revise-draft.js";
import { sectionAnew, withoutSection } from "./sections.js";
import { spliced } from "./text-edits.js";
import type { Recipe } from "./types.js";
import { writeRecipe } from "./write.js";

/**
 * The text of a recipe on another threading, the lifts of its pieces with it. Blocks, pieces and comments stay: a picture
 * stays a picture, rows stay rows, and a line of a weaving order that the new shafts cannot weave as it stands gets a block
 * of its own. Where that cannot be done, the section of the pieces is written out anew, its lifts as rows. Of one of its pieces
 * alone (`recipeOfPiece`) it is the text without the others, and without the blocks and yarns that are theirs alone.
 * @param source the bytes of the file, or its text
 * @param recipe what it is to weave: as `soundRecipe` read it, with another threading and other lifts in its pieces
 * @throws {FileError} as `soundRecipe`, and for a draft that no recipe can be brought to
 * @example revisePieces(pair, soundRecipe(pair, "pair")) === pair // true
 */
export function revisePieces(source: Uint8Array | string, recipe: Recipe): string {
  const { draft, file, pieces } = recipe;
  const whole = readText(source, file);
  const isOne = pieces.length === 1 && soundRecipe(whole, file).pieces.length > 1;
  const before = isOne ? pieceAlone(whole, file, pieces[0]!.name) : whole;
  if (before === undefined) return writeRecipe(withYarnsUsed(recipe));
  const made = rethreaded(before, recipe);
  if (made !== undefined) return made;
  if (!standsInPieces(pieces)) return reviseDraft(before, file, draft).text;
  const path = ["units", "ends"];
  const kept = valueIn(before, file, path) === commonSize(draft.unitEnds);
  const { text: threaded } = reviseRecipe(before, file, [
    { path: ["units", "threading"], value: printThreading(draft.threading) },
    ...(kept ? [] : [{ path, value: draft.unitEnds }]),
  ]);
  const text = withoutSection(
    spliced(threaded, [sectionAnew(threaded, "pieces", writeRecipe(recipe))]),
    "lifts",
  );
  soundRecipe(text, file);
  return text;
}
