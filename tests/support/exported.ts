import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";

/** `GridError`, `type ReadonlyWords`: the names an entry hands on. */
export function exportedNames(path: string): string[] {
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

/** The file of an entry such as `.` or `./print`. */
export const fileOf = (src: string, entry: string) =>
  join(src, `${entry === "." ? "index" : entry.slice(2)}.ts`);
