import { nearest } from "@drawcord/base";
import type { Repeat } from "@drawcord/check";
import { parseReed, parseSley, type Quantity } from "@drawcord/yarn";
import { attempt } from "../tree/problems.js";
import { at, entries, isSection, type Spot, textAt, textOf, wayTo, wrong } from "../tree/spot.js";
import { partAt, placed, quantityAt, quantityOf } from "./notation.js";
import type { KnownYarns } from "./pieces/yarn-order.js";
import type { RecipeCloth } from "./types.js";

/** More than ever goes in draw-in or in the wash, in percent. */
const MOST_LOST = 75;

/** Cloth that takes up its own length again is the most that is woven, in percent. */
const MOST_TAKEN_UP = 100;

/**
 * The section `cloth`, whose shape was checked. A side for a yarn that there is none of is told (`unknown-yarn`).
 * @param known the yarns that there are
 */
export function readCloth(section: Spot | undefined, known: KnownYarns): RecipeCloth {
  const repeat = textAt(section, "repeat");
  return {
    ...quantityAt(section, "sett", "sett", "sett"),
    ...quantityAt(section, "picks", "picks", "sett"),
    ...partAt(section, "reed", "reed", (of) => placed(of, parseReed)),
    ...partAt(section, "sley", "sley", (of) => placed(of, parseSley)),
    ...quantityAt(section, "reed-width", "reedWidth", "length"),
    ...shareAt(section, "draw-in", "drawIn", MOST_LOST),
    ...shareAt(section, "take-up", "takeUp", MOST_TAKEN_UP),
    ...partAt(section, "shrinkage", "shrinkage", readShrinkage),
    ...readFirstPick(section && at(section, "first-pick-from"), known),
    ...(repeat === undefined ? {} : { repeat: repeat as Repeat }),
  };
}

/** One side for all wefts, or each by the name of its yarn or of the weft. */
function readFirstPick(
  of: Spot | undefined,
  known: KnownYarns,
): Pick<RecipeCloth, "firstPickFrom" | "firstPickOf"> {
  if (of === undefined) return {};
  if (!isSection(of)) return { firstPickFrom: textOf(of) === "right" ? "right" : "left" };
  const sides = entries(of).flatMap(([name, side]) => {
    const isKnown = attempt(of.tree.problems, () => checkYarn(side, name, known));
    return isKnown === undefined ? [] : [[name, textOf(side) === "right" ? "right" : "left"] as const];
  });
  return { firstPickOf: Object.fromEntries(sides) };
}

function checkYarn(of: Spot, name: string, known: KnownYarns): true {
  if (known === undefined || known.includes(name)) return true;
  const meant = nearest(name, known);
  const hint = meant === undefined ? `the yarns are ${known.join(", ")}` : `did you mean "${meant}"?`;
  throw wrong(of, "unknown-yarn", `${wayTo(of.path)} is of no yarn of this recipe; ${hint}`);
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
