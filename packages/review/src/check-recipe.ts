import type { Range } from "@drawcord/base";
import type { SearchBounds } from "@drawcord/causes";
import { check, type Report, type RuleName } from "@drawcord/check";
import { needRecipe, placesOf, type Recipe, type RecipePlaces } from "@drawcord/files";
import type { Expansion } from "@drawcord/units";
import { slipWaiversUsed } from "./accepted-slips.js";
import { type PlacedCause, recipeCauses } from "./causes.js";
import { optionsOf } from "./options.js";
import { joinedReviews, type PieceNumbers } from "./pieces.js";
import { recipePlaces } from "./places.js";
import { withSlipWaivers } from "./slip-waivers.js";

/** How a recipe is to be checked, and how long its causes are looked for. */
export interface ReviewOptions extends SearchBounds {
  /** The rules that are to look, by their names; default: all. */
  readonly rules?: readonly RuleName[];
  /** Whether causes are looked for; default: where all rules look. */
  readonly causes?: boolean;
  /** The cloth of a recipe that is a single piece, as `expand` gave it or as a clone of that; default: it is worked out. */
  readonly expansion?: Expansion | undefined;
}

/** The report of a recipe, with the place in its text of each finding. */
export interface Review extends Report {
  /** From where to where in the recipe each finding can be mended, in the order of `findings`; null where no place is known. */
  readonly places: readonly (Range | null)[];
  /** The numbers of each piece in weaving order, where there are several; the others are then those of the first. */
  readonly pieces?: readonly PieceNumbers[];
  /** What was written wrong, that which the weaver should look at first before all others; empty where it was not looked for. */
  readonly causes: readonly PlacedCause[];
  /** What of the search for causes was not tried, as clauses. */
  readonly untried: readonly string[];
}

/**
 * Checks a recipe that was read, by all that it says: the cloth at its sett and within its limits, on its loom, with the
 * numbers that it states beside those that come out. Every part of Drawcord that checks a recipe asks this function.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param asked which rules look, and how long
 * @throws {StoppedError} `stopped` when the signal says so before the cloth is checked; later, what was found until then is told
 * @throws {CheckError} `unknown-rule` for a rule that there is none of
 * @throws {FileError} `unknown-key`, `bad-value` for a rule that there is none of, at its place
 * @example checkRecipe(recipe).ok // true
 */
export function checkRecipe(recipe: Recipe, asked: ReviewOptions = {}): Review {
  needRecipe(recipe);
  if (recipe.pieces.length === 1) return checkPiece(recipe, asked);
  // The text is taken apart once for all pieces.
  const places = placesOf(recipe);
  return joinedReviews(
    recipe.pieces.map((piece, i) =>
      checkPiece(
        { ...recipe, pieces: [piece], draft: piece.draft, limits: piece.limits },
        { ...asked, expansion: undefined },
        // What is said of the warp is said of the first.
        { places: { ...places, rows: () => places.rows(i) }, ...(i === 0 && { whole: recipe }) },
      ),
    ),
    recipe.pieces.map(({ name }) => name),
  );
}

/** What a piece among others has with them. */
interface AmongOthers {
  readonly places?: RecipePlaces;
  /** The recipe with all that is woven on its warp. */
  readonly whole?: Recipe;
}

/** The report of a recipe that is a single piece, or of one of those on a warp. */
function checkPiece(
  recipe: Recipe,
  asked: ReviewOptions,
  { whole, places = placesOf(recipe) }: AmongOthers = {},
): Review {
  const { rules, causes = rules === undefined, expansion, ...search } = asked;
  const options = optionsOf(recipe, whole);
  const checked = check(
    recipe.draft,
    { ...options, ...(rules && { only: rules }) },
    {
      signal: search.signal,
      expansion,
    },
  );
  const found = causes ? recipeCauses(recipe, places, options, checked, search) : { causes: [], untried: [] };
  const used = causes ? slipWaiversUsed(recipe, found.causes) : undefined;
  const report = withSlipWaivers(checked, recipe, used);
  return { ...report, places: recipePlaces(report.findings, places, recipe.pieces[0]!.path), ...found };
}
