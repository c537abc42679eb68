import { applyTogether } from "@drawcord/causes";
import { type Recipe, reviseDraft, reviseRecipe } from "@drawcord/files";
import { checkRecipe, type PlacedCause } from "@drawcord/review";
import { sayChange } from "@drawcord/units";
import type { Edit } from "./edits.js";
import { editsBetween } from "./edits.js";
import type { Found, ToldCause } from "./messages.js";
import { readBench } from "./reading.js";

/** For how many seconds causes are proved; what is not proved until then is said. */
const SECONDS = 20;

/** How often the page hears how far it is, in milliseconds. */
const EVERY = 100;

/**
 * Looks for what was written wrong in a text.
 * @param text of a recipe; nothing is found in anything else, nor in what cannot be read
 * @param send hears how far it is, and what was found
 */
export function search(text: string, send: (found: Found) => void): void {
  const { problems, reading } = readBench(text);
  if (reading?.kind !== "recipe" || problems.length > 0) {
    send({ answer: "causes", causes: [], untried: [] });
    return;
  }
  let said = 0;
  const progress = (proved: number, of: number) => {
    const now = performance.now();
    if (now - said < EVERY) return;
    said = now;
    send({ answer: "searching", proved, of });
  };
  const { recipe } = reading;
  const { causes, untried } = checkRecipe(recipe, { seconds: SECONDS, progress });
  send({ answer: "causes", causes: causes.map((cause) => toldOf(text, recipe, cause)), untried });
}

function toldOf(text: string, recipe: Recipe, cause: PlacedCause): ToldCause {
  const lines = text.split("\n");
  const { changes, column = 1, line = 1, message, sure, why } = cause;
  const from = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0) + column - 1;
  const word = /^[^\s,\]}]+/.exec(text.slice(from))?.[0].length ?? 0;
  return {
    from,
    to: from + word,
    sentence: message,
    why,
    sure,
    explains: cause.explains.length,
    words: changes.map(sayChange).join("; "),
    edits: editsOf(text, recipe, cause),
  };
}

/** What the mend changes in the text; nothing where the recipe cannot be brought to it, as in the lifts of a later piece. */
function editsOf(text: string, recipe: Recipe, { changes, piece }: PlacedCause): readonly Edit[] {
  if (piece !== undefined && piece !== recipe.pieces[0]!.name) return [];
  const numbers = changes.flatMap((change) =>
    change.change === "number" ? [{ path: change.key.split("."), value: change.value }] : [],
  );
  try {
    const revised = reviseDraft(text, recipe.file, applyTogether(recipe.draft, changes)).text;
    return editsBetween(
      text,
      numbers.length === 0 ? revised : reviseRecipe(revised, recipe.file, numbers).text,
    );
  } catch {
    return [];
  }
}
