import type { ShaftDraft, ThreadLook } from "@drawcord/check";
import { draftSize } from "@drawcord/units";
import { convert, type Quantity } from "@drawcord/yarn";
import type { Colour } from "../charts/colours.js";
import type { Recipe } from "../recipe/types.js";
import { type ShaftDraftOptions, shaftDraftOf } from "./from-units.js";

/**
 * The shaft draft of a recipe, with its title, notes and sett, and the colours of its yarns where they are given as
 * `#rrggbb` for every thread of a system.
 * @throws {FileError} `too-many-shafts`
 * @example draftOfRecipe(readRecipe(text, "least")).threading // [[1], [2], [1], [2]]
 */
export function draftOfRecipe(recipe: Recipe, options: ShaftDraftOptions = {}): ShaftDraft {
  const { title, notes, cloth, draft } = recipe;
  const { warp, weft } = coloursOfRecipe(recipe);
  return {
    ...shaftDraftOf(draft, options),
    ...(title === undefined ? {} : { title }),
    ...(notes === undefined ? {} : { notes: notes.trimEnd().split("\n") }),
    warp: lookOf(warp, cloth.sett),
    weft: lookOf(weft, cloth.picks),
  };
}

/** The colours of the ends and of the picks, in their order. */
export interface RecipeColours {
  readonly warp?: readonly Colour[];
  readonly weft?: readonly Colour[];
}

/**
 * The colours of a recipe's threads, of each system whose yarns all have theirs as `#rrggbb`.
 * @example coloursOfRecipe(readRecipe(text, "least")) // {}
 */
export function coloursOfRecipe({ draft, yarns }: Recipe): RecipeColours {
  const { ends, picks } = draftSize(draft);
  const { steps } = draft.ground;
  const colours = new Map(yarns.map(({ name, colour }) => [name, colour] as const));
  const each = (count: number, yarnOf: (thread: number) => string) => {
    const shown = Array.from({ length: count }, (_, thread) => colours.get(yarnOf(thread)));
    return shown.every(isColour) ? shown : undefined;
  };
  const warp = each(ends, () => "warp");
  const weft = each(picks, (pick) => steps[pick % steps.length]!.weft ?? "weft");
  return { ...(warp === undefined ? {} : { warp }), ...(weft === undefined ? {} : { weft }) };
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
