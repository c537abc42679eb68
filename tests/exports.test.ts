import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { libraries } from "./support/packages.js";

/** `GridError`, `type ReadonlyWords`: the names an entry hands on. */
function exportedNames(path: string): string[] {
  const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
  return file.statements.flatMap((statement) => {
    if (!ts.isExportDeclaration(statement))
      throw new Error(`an entry only hands names on: ${statement.getText()}`);
    const { exportClause, isTypeOnly, moduleSpecifier } = statement;
    if (exportClause !== undefined && ts.isNamedExports(exportClause)) {
      const named = exportClause.elements;
      return named.map(({ isTypeOnly: alone, name }) =>
        isTypeOnly || alone ? `type ${name.text}` : name.text,
      );
    }
    if (exportClause === undefined && moduleSpecifier !== undefined && ts.isStringLiteral(moduleSpecifier)) {
      return exportedNames(join(dirname(path), moduleSpecifier.text.replace(/\.js$/, ".ts")));
    }
    throw new Error(`names are handed on as they are: ${statement.getText()}`);
  });
}

describe.each(libraries)("$specifier", ({ entries, name, src }) => {
  it.each(entries)("exports from %s what it did before, unless it is meant to change", async (entry) => {
    const file = entry === "." ? "index" : entry.slice(2);
    const names = exportedNames(join(src, `${file}.ts`)).sort();
    expect(names.length).toBeGreaterThan(0);
    await expect(`${names.join("\n")}\n`).toMatchFileSnapshot(`exports/${name}-${file}.txt`);
  });
});
