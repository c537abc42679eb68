import { kindOf } from "@drawcord/files";
import { CliError } from "./error.js";

/**
 * Sees to it that a file holds no draft or chart; whether it is a sound recipe, its reader says.
 * @param only what only recipes have, as a clause
 * @throws {CliError} `not-a-recipe`
 */
export function onlyRecipes(bytes: Uint8Array, name: string, only: string): void {
  const kind = kindOf(bytes);
  if (kind === "recipe") return;
  const found = kind === "wif" ? "draft" : "chart";
  throw new CliError("not-a-recipe", `${name}: this is a ${found}; ${only}`, { file: name });
}
