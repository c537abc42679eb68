import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
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

/** Every name that a source hands on, with the sources that declare it. */
function declarations(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { name, src } of packages) {
    for (const file of readdirSync(src, { recursive: true, encoding: "utf8" })) {
      if (!file.endsWith(".ts")) continue;
      for (const word of declared(join(src, file))) {
        found.set(word, [...(found.get(word) ?? []), `${name}/${file.replaceAll("\\", "/")}`]);
      }
    }
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
