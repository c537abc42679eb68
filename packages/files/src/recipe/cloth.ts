import type { Repeat } from "@drawcord/check";
import { at, isSection, placeOf, type Spot, textAt, textOf } from "../tree/spot.js";
import { quantityAt, quantityOf } from "./notation.js";
import type { PlacedText, RecipeCloth } from "./types.js";

/** The section `cloth`, whose shape was checked. */
export function readCloth(section: Spot | undefined): RecipeCloth {
  const repeat = textAt(section, "repeat");
  return {
    ...quantityAt(section, "sett", "sett", "sett"),
    ...quantityAt(section, "picks", "picks", "sett"),
    ...placedAt(section, "reed"),
    ...placedAt(section, "sley"),
    ...quantityAt(section, "draw-in", "drawIn", "share"),
    ...quantityAt(section, "take-up", "takeUp", "share"),
    ...readShrinkage(section),
    ...(repeat === undefined ? {} : { repeat: repeat as Repeat }),
  };
}

/** A text that is left to other packages, with its place, as a part of an object. */
function placedAt<Name extends string>(
  section: Spot | undefined,
  name: Name,
): { readonly [key in Name]?: PlacedText } {
  const value = section === undefined ? undefined : at(section, name);
  if (value === undefined) return {};
  return { [name]: { text: textOf(value), ...placeOf(value) } } as { [key in Name]: PlacedText };
}

/** One share counts for both ways of the cloth. */
function readShrinkage(section: Spot | undefined): Pick<RecipeCloth, "shrinkage"> {
  const value = section === undefined ? undefined : at(section, "shrinkage");
  if (value === undefined) return {};
  if (isSection(value)) {
    return {
      shrinkage: {
        ...quantityAt(value, "width", "width", "share"),
        ...quantityAt(value, "length", "length", "share"),
      },
    };
  }
  const share = quantityOf(value, ["share"]);
  return { shrinkage: { width: share, length: share } };
}
