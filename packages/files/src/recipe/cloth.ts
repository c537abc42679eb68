import type { Repeat } from "@drawcord/check";
import { type Quantity, readReed, readSley } from "@drawcord/yarn";
import { at, isSection, type Spot, textAt, wayTo, wrong } from "../tree/spot.js";
import { placed, quantityAt, quantityOf } from "./notation.js";
import type { Placed, RecipeCloth } from "./types.js";

/** More than ever goes in draw-in or in the wash, in percent. */
const MOST_LOST = 75;

/** Cloth that takes up its own length again is the most that is woven, in percent. */
const MOST_TAKEN_UP = 100;

/** The section `cloth`, whose shape was checked. */
export function readCloth(section: Spot | undefined): RecipeCloth {
  const repeat = textAt(section, "repeat");
  const side = textAt(section, "first-pick-from");
  return {
    ...quantityAt(section, "sett", "sett", "sett"),
    ...quantityAt(section, "picks", "picks", "sett"),
    ...placedAt(section, "reed", readReed),
    ...placedAt(section, "sley", readSley),
    ...shareAt(section, "draw-in", "drawIn", MOST_LOST),
    ...shareAt(section, "take-up", "takeUp", MOST_TAKEN_UP),
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
        ...shareAt(value, "width", "width", MOST_LOST),
        ...shareAt(value, "length", "length", MOST_LOST),
      },
    };
  }
  const share = shareOf(value, MOST_LOST);
  return { shrinkage: { width: share, length: share } };
}

/** A share that a weaver can have, in percent. */
function shareOf(of: Spot, most: number): Quantity {
  const share = quantityOf(of, ["share"]);
  if (share.value > most) {
    throw wrong(of, "bad-value", `${wayTo(of.path)} is ${share.value} %; expected at most ${most} %`);
  }
  return share;
}

function shareAt<Name extends string>(
  section: Spot | undefined,
  key: string,
  name: Name,
  most: number,
): { readonly [key in Name]?: Quantity } {
  const value = section === undefined ? undefined : at(section, key);
  return value === undefined ? {} : ({ [name]: shareOf(value, most) } as { [key in Name]: Quantity });
}
