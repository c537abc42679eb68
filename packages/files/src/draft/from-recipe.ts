import { convert, type Quantity } from "@drawcord/yarn/quantity";
import type { Colour } from "../charts/colours.js";
import type { Recipe } from "../recipe/types.js";
import { type ShaftDraftOptions, shaftDraftOf } from "./from-units.js";
import type { ShaftDraft, ThreadLook } from "./types.js";

/**
 * The shaft draft of a recipe, with its title, notes and sett, and the colours of its yarns where they are given as
 * `#rrggbb` for every thread of a system.
 * @throws {FileError} `too-many-shafts`
 * @example draftOfRecipe(readRecipe(text, "least")).threading // [[1], [2], [1], [2]]
 */
export function draftOfRecipe(recipe: Recipe, options: ShaftDraftOptions = {}): ShaftDraft {
  const { title, notes, cloth, draft } = recipe;
  const plain = shaftDraftOf(draft, options);
  const { steps } = draft.ground;
  const picks =
    plain.shedding.kind === "tie-up" ? plain.shedding.treadling.length : plain.shedding.liftPlan.length;
  const wefts = Array.from({ length: picks }, (_, pick) => steps[pick % steps.length]!.weft ?? "weft");
  return {
    ...plain,
    ...(title === undefined ? {} : { title }),
    ...(notes === undefined ? {} : { notes: notes.trimEnd().split("\n") }),
    warp: lookOf(
      recipe,
      plain.threading.map(() => "warp"),
      cloth.sett,
    ),
    weft: lookOf(recipe, wefts, cloth.picks),
  };
}

function lookOf(recipe: Recipe, yarns: readonly string[], sett: Quantity | undefined): ThreadLook {
  const colours = new Map(recipe.yarns.map(({ name, colour }) => [name, colour] as const));
  const shown = yarns.map((yarn) => colours.get(yarn)).filter(isColour);
  return {
    ...(shown.length === yarns.length ? { colours: shown } : {}),
    ...(sett === undefined
      ? {}
      : { unit: "centimeters", spacing: { all: 1 / convert(sett, "per cm").value } }),
  };
}

function isColour(colour: string | undefined): colour is Colour {
  return colour !== undefined && /^#[\da-f]{6}$/i.test(colour);
}
