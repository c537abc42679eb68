import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { soundRecipe } from "@drawcord/files";
import { practicePage } from "@drawcord/lesson";

/**
 * Writes the page of the class's loom into a built site, as the command of the guide writes it.
 * @param folder the built site
 */
export function practiceWritten(folder: string): void {
  const runner = new URL("../../shared/recipes/runner.recipe.yaml", import.meta.url);
  const recipe = soundRecipe(readFileSync(runner), "runner");
  writeFileSync(
    join(folder, "practice.html"),
    practicePage(recipe, { check: true, level: 1, tasks: ["plan", "cut"] }),
  );
}
