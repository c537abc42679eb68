import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** A code of an error, what it means, and where it comes from. */
export interface ErrorCode {
  readonly code: string;
  /** A sentence for each meaning that it has. */
  readonly meanings: readonly string[];
  /** The folders of the packages that give it, and the class of the error in each. */
  readonly from: readonly { readonly folder: string; readonly error: string }[];
}

/**
 * Every code of every error class, read in the docstrings of the sources, in the order of the alphabet.
 * @param root the folder of the whole project
 */
export function errorCodes(root: string): readonly ErrorCode[] {
  const found = new Map<string, { readonly meanings: Set<string>; readonly from: ErrorCode["from"] }>();
  for (const folder of readdirSync(join(root, "packages"))) {
    if (folder.endsWith(".json")) continue;
    for (const { code, error, meaning } of codesOf(join(root, "packages", folder, "src"))) {
      const { from, meanings } = found.get(code) ?? { from: [], meanings: new Set() };
      if (meaning !== "") meanings.add(meaning);
      found.set(code, { meanings, from: [...from, { folder, error }] });
    }
  }
  return [...found]
    .map(([code, { from, meanings }]) => ({ code, from, meanings: [...meanings] }))
    .sort((a, b) => (a.code < b.code ? -1 : 1));
}

/** A code of a package, its class, and what its docstring says of it, as a sentence; empty where it says nothing. */
interface CodeOf {
  readonly code: string;
  readonly error: string;
  readonly meaning: string;
}

function codesOf(src: string): readonly CodeOf[] {
  const files = ["error.ts", "need.ts", "watch.ts"].map((file) => join(src, file));
  return files.flatMap((file) => {
    const [, words = "", error = "", union = ""] =
      /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\nexport type (\w+Error)Code =([^;]*);/.exec(textOf(file)) ?? [];
    const said = words.replace(/\n \* {3}/g, " ");
    return [...union.matchAll(/"([\w-]+)"/g)].map(([, code]) => {
      const [, meaning = ""] = new RegExp(`^ \\* - \`${code}\`: (.*)$`, "m").exec(said) ?? [];
      return { code: code!, error, meaning: meaning && `${meaning[0]!.toUpperCase()}${meaning.slice(1)}.` };
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
