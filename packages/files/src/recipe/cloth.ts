import type { Repeat } from "@drawcord/check";
import { readReed, readSley } from "@drawcord/yarn/quantity";
import { at, isSection, type Spot, textAt } from "../tree/spot.js";
import { placed, quantityAt, quantityOf } from "./notation.js";
import type { Placed, RecipeCloth } from "./types.js";

/** The section `cloth`, whose shape was checked. */
export function readCloth(section: Spot | undefined): RecipeCloth {
  const repeat = textAt(section, "repeat");
  const side = textAt(section, "first-pick-from");
  return {
    ...quantityAt(section, "sett", "sett", "sett"),
    ...quantityAt(section, "picks", "picks", "sett"),
    ...placedAt(section, "reed", readReed),
    ...placedAt(section, "sley", readSley),
    ...quantityAt(section, "draw-in", "drawIn", "share"),
    ...quantityAt(section, "take-up", "takeUp", "share"),
    ...readShrinkage(section),
    ...(side === undefined ? {} : { firstPickFrom: side === "right" ? "right" : "left" }),
    ...(repeat === undefined ? {} : { repeat: repeat as Repeat }),
  };
}

/** What `read` makes of a text that a section may leave out, as a part of an object. */
function placedAt<Name extends string, T>(
  section: Spot | undefined,
  name: Name,
  read: (text: string) => T,
): { readonly [key in Name]?: Placed<T> } {
  const value = section === undefined ? undefined : at(section, name);
  return value === undefined ? {} : ({ [name]: placed(value, read) } as { [key in Name]: Placed<T> });
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
