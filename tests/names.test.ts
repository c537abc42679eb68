import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { limits, rules } from "@drawcord/check";
import ts from "typescript";
import { expect, it } from "vitest";
import { packages } from "./support/packages.js";

/** What a file declares and hands on, each name once: the ways to call a function are one. */
function declared(path: string): readonly string[] {
  const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest);
  const names = file.statements.flatMap((statement) => {
    if (!ts.canHaveModifiers(statement)) return [];
    const handed = statement.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (handed !== true) return [];
    const named = ts.isVariableStatement(statement) ? statement.declarationList.declarations : [statement];
    return named.flatMap(({ name }: { name?: ts.Node }) =>
      name !== undefined && ts.isIdentifier(name) ? [name.text] : [],
    );
  });
  return [...new Set(names)];
}

/** Every source of the packages, by its package and its file. */
const sources = packages.flatMap(({ name, src }) =>
  readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.startsWith("generated"))
    .map((file) => ({ source: `${name}/${file.replaceAll("\\", "/")}`, path: join(src, file) })),
);

/** Every name that a source hands on, with the sources that declare it. */
function declarations(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { path, source } of sources) {
    for (const word of declared(path)) found.set(word, [...(found.get(word) ?? []), source]);
  }
  return found;
}

/** What every command calls itself in its own file. */
const COMMAND = "command";

it("one name is one thing in all packages", () => {
  const names = declarations();
  expect(names.get("BitGrid")).toEqual(["grid/bit-grid.ts"]);
  expect([...names].filter(([name, files]) => name !== COMMAND && files.length > 1)).toEqual([]);
});

/** What a rule is called that a limit, a key of a recipe or an error is called too. */
const CALLED_SO_TOO = new Set<string>([...limits.map(({ key }) => key), "reed-width", "unknown-shaft"]);

it("a rule's name stands in its own file alone", () => {
  const names = rules.map(({ name }) => name).filter((name) => !CALLED_SO_TOO.has(name));
  const quoted = new RegExp(`"(${names.join("|")})"`);
  const holders = sources.flatMap(({ path, source }) => {
    const lines = readFileSync(path, "utf8").split("\n");
    // What a comment or an example in a schema shows is no use of it.
    return lines
      .filter((line) => quoted.test(line) && !/^\s*(\*|\/\*)|examples:/.test(line))
      .map(() => source);
  });
  expect(holders).toContain("check/rules/open-cut.ts");
  expect(holders.filter((source) => !source.startsWith("check/rules/"))).toEqual([]);
});
