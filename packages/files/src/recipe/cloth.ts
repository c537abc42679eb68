import type { Repeat } from "@drawcord/check";
import { parseReed, parseSley, type Quantity } from "@drawcord/yarn";
import { isSection, type Spot, textAt, wayTo, wrong } from "../tree/spot.js";
import { partAt, placed, quantityAt, quantityOf } from "./notation.js";
import type { RecipeCloth } from "./types.js";

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
    ...partAt(section, "reed", "reed", (of) => placed(of, parseReed)),
    ...partAt(section, "sley", "sley", (of) => placed(of, parseSley)),
    ...quantityAt(section, "reed-width", "reedWidth", "length"),
    ...shareAt(section, "draw-in", "drawIn", MOST_LOST),
    ...shareAt(section, "take-up", "takeUp", MOST_TAKEN_UP),
    ...partAt(section, "shrinkage", "shrinkage", readShrinkage),
    ...(side === undefined ? {} : { firstPickFrom: side === "right" ? "right" : "left" }),
    ...(repeat === undefined ? {} : { repeat: repeat as Repeat }),
  };
}

/** One share counts for both ways of the cloth. */
function readShrinkage(of: Spot): NonNullable<RecipeCloth["shrinkage"]> {
  if (isSection(of)) {
    return { ...shareAt(of, "width", "width", MOST_LOST), ...shareAt(of, "length", "length", MOST_LOST) };
  }
  const share = shareOf(of, MOST_LOST);
  return { width: share, length: share };
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
  return partAt(section, key, name, (value) => shareOf(value, most));
}
