import { DrawcordError } from "@drawcord/base";
import { mend } from "@drawcord/causes";
import { placesOf, type Recipe, recipeOfPiece, reviseDraft } from "@drawcord/files";
import {
  checkRecipe,
  mendText,
  optionsOf,
  type PlacedCause,
  type Review,
  writtenRows,
} from "@drawcord/review";
import { type Change, sayChange } from "@drawcord/units";
import { editsBetween, shownEdits } from "./edits.js";
import type { Found, ToldCause, ToldMend, ToldOffer } from "./messages.js";
import { readBench } from "./reading.js";

/** For how many seconds causes are proved, and then mends; what is not proved until then is said. */
const SECONDS = 20;

/** How often the page hears how far it is, in milliseconds. */
const EVERY = 100;

/** Other edits that do as well are shown so far. */
const MOST_RIVALS = 3;

/**
 * Looks for what was written wrong in a text, and for what would mend the rest.
 * @param text of a recipe; nothing is found in anything else, nor in what cannot be read
 * @param send hears how far it is, and what was found
 */
export async function search(text: string, send: (found: Found) => void): Promise<void> {
  const { problems, reading } = await readBench(text);
  if (reading?.kind !== "recipe" || problems.length > 0) {
    send({ answer: "causes", causes: [], offers: [], untried: [], isAll: true });
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
  const review = checkRecipe(recipe, { seconds: SECONDS, progress });
  const causes = review.causes.flatMap((cause) =>
    cause.waived === undefined ? [toldOf(text, recipe, cause)] : [],
  );
  const { untried } = review;
  const isAll = !isLeft(review);
  send({ answer: "causes", causes, offers: [], untried, isAll });
  if (isAll) return;
  const offers = offersFor(text, recipe, { seconds: SECONDS, progress });
  send({ answer: "causes", causes, offers, untried, isAll: true });
}

/** Whether something is found that no cause accounts for. */
function isLeft({ causes, findings }: Review): boolean {
  const explained = new Set(causes.flatMap(({ explains }) => explains));
  return findings.some(
    ({ severity, waived }, i) => severity !== "note" && waived === undefined && !explained.has(i),
  );
}

function toldOf(text: string, recipe: Recipe, cause: PlacedCause): ToldCause {
  const { changes, end, explains, message, offset = 0, piece, rivals, severity, sure, why } = cause;
  return {
    from: offset,
    to: end?.offset ?? offset,
    level: severity,
    sentence: message,
    why,
    sure,
    explains: explains.length,
    mends: [changes, ...rivals.slice(0, MOST_RIVALS)].flatMap((one) => mendOf(text, recipe, piece, one)),
  };
}

/** What changes do in the text; nothing where the recipe cannot be brought to them. */
function mendOf(
  text: string,
  recipe: Recipe,
  piece: string | undefined,
  changes: readonly Change[],
): readonly ToldMend[] {
  const of = piece === undefined ? recipe : (recipeOfPiece(recipe, piece) ?? recipe);
  const revised = written(() => mendText(of, changes).text);
  if (revised === undefined) return [];
  return [toldMend(text, revised, changes)];
}

/** What would mend the findings that no cause accounts for, piece by piece, each with those before it. */
function offersFor(text: string, recipe: Recipe, bounds: object): readonly ToldOffer[] {
  return recipe.pieces.flatMap(({ name }): readonly ToldOffer[] => {
    const piece = recipeOfPiece(recipe, name)!;
    const { draft, file } = piece;
    const mends = mend(draft, optionsOf(piece), { ...bounds, written: writtenRows(draft, placesOf(piece)) });
    return mends.flatMap(({ cause, changes, draft: mended, rules }) => {
      if (cause !== undefined) return [];
      const revised = written(() => reviseDraft(text, file, mended, name).text);
      if (revised === undefined) return [];
      return [{ rules, ...toldMend(text, revised, changes) }];
    });
  });
}

function toldMend(text: string, revised: string, changes: readonly Change[]): ToldMend {
  const edits = editsBetween(text, revised);
  return {
    words: changes.map((change) => sayChange(change)).join("; "),
    edits,
    shown: shownEdits(text, edits),
  };
}

/** A text that was revised; undefined where it cannot be. */
function written(revise: () => string): string | undefined {
  try {
    return revise();
  } catch (error) {
    if (error instanceof DrawcordError) return undefined;
    throw error;
  }
}
