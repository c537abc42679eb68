/** Brings other lifts of all pieces, over another threading, back into the text of their recipe. */
import { commonSize, printThreading } from "@drawcord/units";
import { readText } from "../text.js";
import { standsInPieces } from "./pieces/write.js";
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
 * of its own. Where that cannot be done, the section of the pieces is written out anew, its lifts as rows.
 * @param source the bytes of the file, or its text
 * @param recipe what it is to weave: as `soundRecipe` read it, with another threading and other lifts in its pieces
 * @throws {FileError} as `soundRecipe`, and for a draft that no recipe can be brought to
 * @example revisePieces(pair, soundRecipe(pair, "pair")) === pair // true
 */
export function revisePieces(source: Uint8Array | string, recipe: Recipe): string {
  const { draft, file } = recipe;
  const made = rethreaded(readText(source, file), recipe);
  if (made !== undefined) return made;
  if (!standsInPieces(recipe.pieces)) return reviseDraft(source, file, draft).text;
  const path = ["units", "ends"];
  const kept = valueIn(source, file, path) === commonSize(draft.unitEnds);
  const { text: threaded } = reviseRecipe(source, file, [
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
