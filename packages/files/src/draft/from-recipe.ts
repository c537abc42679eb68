import type { ShaftDraft, ThreadLook } from "@drawcord/check";
import type { Colour } from "@drawcord/draw";
import { BitGrid } from "@drawcord/grid";
import { draftSize, expand } from "@drawcord/units";
import { convert, type Quantity } from "@drawcord/yarn";
import type { Recipe } from "../recipe/types.js";
import { type ShaftDraftOptions, shaftDraftOfCloth } from "./from-units.js";

/**
 * The shaft draft of a recipe, its pieces once each in weaving order, with its title, notes and sett, and the colours of its
 * yarns where they are given as `#rrggbb` for every thread of a system.
 * @param recipe a recipe as `soundRecipe` gives it
 * @param options the most shafts, and whether treadles or a lift plan move them
 * @throws {FileError} `too-many-shafts`
 * @example draftOfRecipe(soundRecipe(text, "least")).threading // [[1], [2], [1], [2]]
 */
export function draftOfRecipe(recipe: Recipe, options: ShaftDraftOptions = {}): ShaftDraft {
  const { title, notes, cloth } = recipe;
  const { warp, weft } = coloursOfRecipe(recipe);
  return {
    ...shaftDraftOfCloth(drawdownOfRecipe(recipe), options),
    ...(title === undefined ? {} : { title }),
    ...(notes === undefined ? {} : { notes: notes.trimEnd().split("\n") }),
    warp: lookOf(warp, cloth.sett),
    weft: lookOf(weft, cloth.picks),
  };
}

/**
 * The cloth of a recipe, its pieces once each in weaving order, without the warp that is left unwoven between them.
 * @param recipe a recipe as `soundRecipe` gives it, or its pieces alone
 * @returns picks x ends: raised where the end lies over the pick on the face; the first pick of the first piece in row 0
 * @example drawdownOfRecipe(soundRecipe(text, "least")).columns // 4
 */
export function drawdownOfRecipe({ pieces }: Pick<Recipe, "pieces">): BitGrid {
  const drawdowns = pieces.map(({ draft }) => expand(draft).drawdown);
  const [first] = drawdowns as [BitGrid, ...BitGrid[]];
  if (drawdowns.length === 1) return first;
  const rows = drawdowns.reduce((sum, one) => sum + one.rows, 0);
  const words = new Uint32Array(rows * first.stride);
  let at = 0;
  for (const one of drawdowns) {
    words.set(one.words, at);
    at += one.words.length;
  }
  return BitGrid.own(rows, first.columns, words);
}

/** The colours of the ends and of the picks, in their order. */
export interface RecipeColours {
  /** A colour an end, end 1 first; left out where a yarn of the warp has none. */
  readonly warp?: readonly Colour[];
  /** A colour a pick, pick 1 first; left out where a yarn of the weft has none. */
  readonly weft?: readonly Colour[];
}

/**
 * The colours of a recipe's threads, its pieces once each in weaving order, of each system whose yarns all have theirs as
 * `#rrggbb`.
 * @param recipe a recipe as `soundRecipe` gives it
 * @example coloursOfRecipe(soundRecipe(text, "least")) // {}
 */
export function coloursOfRecipe({ pieces, warp: order, yarns }: Recipe): RecipeColours {
  const colours = new Map(yarns.map(({ name, colour }) => [name, colour] as const));
  const shown = (count: number, names: readonly string[]) =>
    Array.from({ length: count }, (_, thread) => colours.get(names[thread % names.length]!));
  const ends = shown(draftSize(pieces[0]!.draft).ends, order);
  const picks = pieces.flatMap(({ draft, wefts }) => shown(draftSize(draft).picks, wefts));
  return { ...(ends.every(isColour) && { warp: ends }), ...(picks.every(isColour) && { weft: picks }) };
}

function lookOf(colours: readonly Colour[] | undefined, sett: Quantity | undefined): ThreadLook {
  return {
    ...(colours === undefined ? {} : { colours }),
    ...(sett === undefined
      ? {}
      : { unit: "centimeters", spacing: { all: 1 / convert(sett, "per cm").value } }),
  };
}

function isColour(colour: string | undefined): colour is Colour {
  return colour !== undefined && /^#[\da-f]{6}$/i.test(colour);
}
