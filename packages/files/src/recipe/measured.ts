import { withSample, YarnError } from "@drawcord/yarn";
import { tell } from "../tree/problems.js";
import { at, numberAt, type Spot, wayTo, wrong } from "../tree/spot.js";
import { quantityAt } from "./notation.js";
import type { RecipeCloth, RecipeMeasured } from "./types.js";

/** Measures that tell something only beside another. */
const partners: Readonly<Record<string, string>> = {
  "width-in-reed": "width",
  width: "width-in-reed",
  "washed-width": "width",
  warp: "length",
  "washed-length": "length",
  picks: "over",
  over: "picks",
  square: "square-weight",
};

/** The section `measured`, whose shape was checked. */
export function readMeasured(section: Spot | undefined): RecipeMeasured {
  if (section === undefined) return {};
  const picks = numberAt(section, "picks");
  tellLonely(section);
  return {
    ...quantityAt(section, "width-in-reed", "widthInReed", "length"),
    ...quantityAt(section, "width", "width", "length"),
    ...quantityAt(section, "washed-width", "washedWidth", "length"),
    ...quantityAt(section, "warp", "warp", "length"),
    ...quantityAt(section, "length", "length", "length"),
    ...quantityAt(section, "washed-length", "washedLength", "length"),
    ...(picks === undefined ? {} : { picks }),
    ...quantityAt(section, "over", "over", "length"),
    ...quantityAt(section, "square", "square", "length"),
    ...quantityAt(section, "square-weight", "squareWeight", "mass"),
  };
}

/** Tells of each measure without the one that it tells something with. */
function tellLonely(section: Spot): void {
  for (const [key, partner] of Object.entries(partners)) {
    const value = at(section, key);
    if (value === undefined || at(section, partner) !== undefined) continue;
    // A width on the loom tells the shrinkage too.
    if (key === "width" && at(section, "washed-width") !== undefined) continue;
    const said = `${wayTo(value.path)} tells nothing without ${wayTo([...section.path, partner])} beside it`;
    tell(section.tree.problems, wrong(value, "missing-key", said));
  }
}

/** What a sample says of the cloth in place of what is given; the cloth as given where its measures cannot be. */
export function clothBySample(cloth: RecipeCloth, measured: RecipeMeasured): RecipeCloth {
  const { drawIn, picks: pickSett, shrinkage, takeUp } = cloth;
  const given = { drawIn, pickSett, shrinkage, takeUp };
  try {
    const known = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
    const found = withSample({ ends: 0, picks: 0, ...known, measured });
    return {
      ...cloth,
      ...(found.pickSett && { picks: found.pickSett }),
      ...(found.shrinkage && { shrinkage: found.shrinkage }),
    };
  } catch (error) {
    if (error instanceof YarnError) return cloth;
    throw error;
  }
}
