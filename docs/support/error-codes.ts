import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** A code of an error, what it means, and the packages that give it. */
export interface ErrorCode {
  readonly code: string;
  /** A sentence for each meaning that it has. */
  readonly meanings: readonly string[];
  readonly packages: readonly string[];
}

/**
 * Every code of every error class, read in the docstrings of the sources, in the order of the alphabet.
 * @param root the folder of the whole project
 */
export function errorCodes(root: string): readonly ErrorCode[] {
  const found = new Map<string, { readonly meanings: Set<string>; readonly packages: string[] }>();
  for (const name of readdirSync(join(root, "packages"))) {
    if (name.endsWith(".json")) continue;
    for (const [code, meaning] of codesOf(join(root, "packages", name, "src"))) {
      const { meanings, packages } = found.get(code) ?? { meanings: new Set(), packages: [] };
      if (meaning !== "") meanings.add(meaning);
      found.set(code, {
        meanings,
        packages: [...packages, name === "cli" ? "drawcord" : `@drawcord/${name}`],
      });
    }
  }
  return [...found]
    .map(([code, { meanings, packages }]) => ({ code, meanings: [...meanings], packages }))
    .sort((a, b) => (a.code < b.code ? -1 : 1));
}

/** The codes of a package, each with what its docstring says of it, as a sentence; empty where it says nothing. */
function codesOf(src: string): readonly (readonly [code: string, meaning: string])[] {
  const files = ["error.ts", "need.ts", "watch.ts"].map((file) => join(src, file));
  return files.flatMap((file) => {
    const [, words = "", union = ""] =
      /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\nexport type \w+ErrorCode =([^;]*);/.exec(textOf(file)) ?? [];
    const said = words.replace(/\n \* {3}/g, " ");
    return [...union.matchAll(/"([\w-]+)"/g)].map(([, code]) => {
      const [, meaning = ""] = new RegExp(`^ \\* - \`${code}\`: (.*)$`, "m").exec(said) ?? [];
      return [code!, meaning && `${meaning[0]!.toUpperCase()}${meaning.slice(1)}.`] as const;
    });
  });
}

function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return "";
  }
}
