import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** A code of an error, and the packages that give it. */
export interface ErrorCode {
  readonly code: string;
  readonly packages: readonly string[];
}

/**
 * Every code of every error class, read in the sources, in the order of the alphabet.
 * @param root the folder of the whole project
 */
export function errorCodes(root: string): readonly ErrorCode[] {
  const found = new Map<string, string[]>();
  for (const name of readdirSync(join(root, "packages"))) {
    if (name.endsWith(".json")) continue;
    for (const code of codesOf(join(root, "packages", name, "src/error.ts"))) {
      found.set(code, [...(found.get(code) ?? []), name === "cli" ? "drawcord" : `@drawcord/${name}`]);
    }
  }
  return [...found]
    .map(([code, packages]) => ({ code, packages }))
    .sort((a, b) => (a.code < b.code ? -1 : 1));
}

function codesOf(file: string): readonly string[] {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch {
    return [];
  }
  const [, union = ""] = /export type \w+ErrorCode =([^;]*);/.exec(text) ?? [];
  return [...union.matchAll(/"([\w-]+)"/g)].map(([, code]) => code!);
}
