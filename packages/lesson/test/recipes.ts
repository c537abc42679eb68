import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Recipe, soundRecipe } from "@drawcord/files";

/** A recipe of `shared/recipes/`. */
export function exampleRecipe(name: string): Recipe {
  const file = `${name}.recipe.yaml`;
  return soundRecipe(readFileSync(join(import.meta.dirname, "../../../shared/recipes", file)), file);
}
