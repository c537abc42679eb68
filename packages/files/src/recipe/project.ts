import type { Kind } from "@drawcord/yarn";
import { attempt } from "../tree/problems.js";
import { entries, numberAt, placeOf, type Spot, textAt, textOf } from "../tree/spot.js";
import { quantityAt, quantityOf } from "./notation.js";
import type { RecipeLoom, RecipeProject, Stated, StatedName } from "./types.js";

/** The section `project`, whose shape was checked. */
export function readProject(section: Spot | undefined): RecipeProject {
  return {
    ...numberNamed(section, "pieces", "pieces"),
    ...quantityAt(section, "warp", "warp", "length"),
    ...quantityAt(section, "width", "width", "length"),
    ...quantityAt(section, "length", "length", "length"),
    ...quantityAt(section, "hems", "hems", "length"),
    ...quantityAt(section, "fringe", "fringe", "length"),
    ...quantityAt(section, "gaps", "gaps", "length"),
    ...quantityAt(section, "sampling", "sampling", "length"),
    ...quantityAt(section, "waste", "waste", "length"),
    ...quantityAt(section, "spare", "spare", "share"),
  };
}

/** The section `loom`, whose shape was checked. */
export function readLoom(section: Spot | undefined): RecipeLoom {
  const action = textAt(section, "action");
  return {
    ...numberNamed(section, "pattern-shafts", "patternShafts"),
    ...numberNamed(section, "ground-shafts", "groundShafts"),
    ...numberNamed(section, "treadles", "treadles"),
    ...numberNamed(section, "lingos", "lingos"),
    ...numberNamed(section, "heddles", "heddles"),
    ...quantityAt(section, "lingo-weight", "lingoWeight", "mass"),
    ...quantityAt(section, "weaving-width", "weavingWidth", "length"),
    ...(action === undefined ? {} : { action: action as NonNullable<RecipeLoom["action"]> }),
  };
}

function numberNamed<Name extends string>(
  section: Spot | undefined,
  key: string,
  name: Name,
): { readonly [key in Name]?: number } {
  const number = numberAt(section, key);
  return number === undefined ? {} : ({ [name]: number } as { [key in Name]: number });
}

/** What the stated numbers that are no plain numbers measure. */
const measures: Readonly<Partial<Record<StatedName, readonly Kind[]>>> = {
  "width-in-reed": ["length"],
  "finished-width": ["length"],
  "finished-length": ["length"],
  "warp-length": ["length"],
  "left-over": ["length"],
  "warp-yarn": ["length", "mass"],
  "weft-yarn": ["length", "mass"],
  "cloth-weight": ["area-weight"],
};

/** The section `stated`, whose shape was checked, in the order of the text. */
export function readStated(section: Spot | undefined): readonly Stated[] {
  if (section === undefined) return [];
  return entries(section).flatMap(([key, value]) => {
    const name = key as StatedName;
    const kinds = measures[name] ?? ["number"];
    const claim = attempt(value.tree.problems, () => quantityOf(value, kinds));
    const { column, line } = placeOf(value);
    return claim === undefined ? [] : [{ name, text: textOf(value), claim, line, column }];
  });
}
