import { check, type Report } from "@drawcord/check";
import { checkOptions, type Place, readRecipe, statedNumbers } from "@drawcord/files";
import { expand } from "@drawcord/units";
import { CliError } from "../error.js";
import type { Cloth } from "./cloth.js";
import { recipePlaces } from "./recipe-place.js";
import { onlyRules, withReasons } from "./selection.js";

/** What is kept of a checked file: all that follows from its content and the rules asked for. */
export interface Kept {
  readonly title: string | null;
  readonly report: Report;
  readonly places: readonly (Place | null)[];
}

/**
 * Reads a recipe and checks it by the rules asked for.
 * @throws {FileError} with its place, for what cannot be read
 * @throws {CliError} `no-rule` when the recipe switches all of them off
 */
export async function checkFile(bytes: Uint8Array, file: string, rules: readonly string[]): Promise<Kept> {
  const recipe = readRecipe(bytes, file);
  const options = { ...checkOptions(recipe), stated: await statedNumbers(recipe) };
  const report = withReasons(check(recipe.draft, onlyRules(options, rules)), rules);
  if (report.rules.ran.length === 0) {
    throw new CliError("no-rule", `${file}: every rule is switched off, so nothing was checked`, { file });
  }
  return { title: recipe.title ?? null, report, places: recipePlaces(report.findings, recipe) };
}

/** A checked file as the formats take it. */
export function clothOf({ places, report, title }: Kept, bytes: Uint8Array, file: string): Cloth {
  const drawdown = once(() => expand(readRecipe(bytes, file).draft).drawdown);
  return { file, title: title ?? undefined, report, places, drawdown };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
