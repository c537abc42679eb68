import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Recipe, soundRecipe } from "@drawcord/files";

/** A recipe of `shared/recipes/`. */
export function exampleRecipe(name: string): Recipe {
  const file = `${name}.recipe.yaml`;
  return soundRecipe(readFileSync(join(import.meta.dirname, "../../../shared/recipes", file)), file);
}

/** Two small pieces, each of three rows of four picks. */
export const smallRecipe: Recipe = soundRecipe(
  `recipe: 1
title: Two mats
ground: { weave: broken twill, ends: 4 }
units: { ends: 4, threading: X 1-3 2 1 X }
lifts: { picks: 4, rows: [1 3, 2, none] }
project: { pieces: 2 }
loom: { lingo-weight: 20 g }
`,
  "mats",
);
