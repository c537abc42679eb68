import { readFileSync } from "node:fs";
import { coloursOfRecipe, soundRecipe, writePng } from "@drawcord/files";
import { expand } from "@drawcord/units";
import { harnessOf, pitchOf } from "./draw.js";
import type { Harness } from "./messages.js";

/** The first cloth as the page brings it, to be looked at while what draws is still on its way. */
export interface FirstCloth {
  /** A picture, a pixel a crossing, as an address that holds it. */
  readonly picture: string;
  /** How wide it is beside its height. */
  readonly shape: number;
  readonly harness: Harness;
}

declare const data: FirstCloth;

export { data };

/** Drawn when the site is built, by the functions that draw it on the bench. */
export default {
  load(): FirstCloth {
    const file = new URL("../../shared/recipes/runner.recipe.yaml", import.meta.url);
    const recipe = soundRecipe(readFileSync(file), "runner.recipe.yaml");
    const { drawdown } = expand(recipe.draft);
    const [wide, high] = pitchOf({ kind: "recipe", recipe });
    const png = Buffer.from(writePng(drawdown, coloursOfRecipe(recipe))).toString("base64");
    return {
      picture: `data:image/png;base64,${png}`,
      shape: (drawdown.columns * wide) / (drawdown.rows * high),
      harness: harnessOf(recipe, 0),
    };
  },
};
