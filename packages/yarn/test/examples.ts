import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** One `@example expression // result` of a docstring, or a line of a README. */
export interface Example {
  readonly where: string;
  readonly code: string;
  readonly expected: string;
}

/** Every example in the docstrings of the sources. */
export function docstringExamples(): Example[] {
  const root = fileURLToPath(new URL("../src/", import.meta.url));
  const files = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".ts"),
  );
  return files.sort().flatMap((file) => {
    const text = readFileSync(`${root}${file}`, "utf8");
    return [...text.matchAll(/@example (.+?) \/\/ (.+?)(?: \*\/)?$/gm)].map(([, code, expected]) => ({
      where: file,
      code: code!,
      expected: expected!,
    }));
  });
}

/** The value of an expression in which the given names are known. */
export function evaluateExample(code: string, names: Readonly<Record<string, unknown>>): unknown {
  return new Function(...Object.keys(names), `"use strict"; return (${code});`)(...Object.values(names));
}
