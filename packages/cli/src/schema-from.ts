import { existsSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";

/** The schema of recipes that editors read, in the package of the command. */
const SHIPPED = new URL("../recipe.schema.json", import.meta.url);

/**
 * Where an editor finds the schema of recipes from a file: in the command's package where that is installed in its folder or
 * in one around it, so that the path holds wherever the folder is moved to; else in the package of the command that runs,
 * by its address.
 * @param file the path of the file, seen from `cwd`
 */
export function schemaFrom(file: string, cwd: string): string {
  const start = dirname(resolve(cwd, file));
  for (let folder = start; ; folder = dirname(folder)) {
    const installed = join(folder, "node_modules", "drawcord", "recipe.schema.json");
    if (existsSync(installed)) return relative(start, installed).split(sep).join("/");
    if (folder === dirname(folder)) return SHIPPED.href;
  }
}
