import { readdirSync, readFileSync } from "node:fs";
import * as grid from "@drawcord/grid";
import { describe, expect, it } from "vitest";

const sources = new URL("../src/", import.meta.url);
const files = readdirSync(sources, { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith(".ts"),
);

/** Every export of every module of the package, so that an example may name what its file exports. */
const modules: object[] = await Promise.all(files.map((file) => import(new URL(file, sources).href)));
const scope: Record<string, unknown> = Object.assign({}, grid, ...modules);

/** The value of an expression over the names in scope. */
function value(expression: string): unknown {
  return new Function(...Object.keys(scope), `return (${expression});`)(...Object.values(scope));
}

const examples = files.flatMap((file) =>
  [...readFileSync(new URL(file, sources), "utf8").matchAll(/@example (.+) \/\/ (.+)/g)].map(
    ([, expression, result]) => [file, expression!, result!] as const,
  ),
);

describe("the examples of the docstrings", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(9);
  });

  it.each(examples)("%s: %s", (_, expression, result) => {
    expect(value(expression)).toEqual(value(result));
  });
});

describe("the examples of the README", () => {
  const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
  const code = /```js\n([\s\S]+?)```/.exec(readme)![1]!;
  const lines = [...code.matchAll(/^(.+); \/\/ (.+)$/gm)].map(
    ([, expression, result]) => [expression!, result!] as const,
  );

  it("are found", () => {
    expect(lines.length).toBeGreaterThan(2);
  });

  it.each(lines)("%s", (expression, result) => {
    expect(value(expression)).toEqual(value(result));
  });
});
