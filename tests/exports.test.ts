import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { exportedNames, fileOf } from "./support/exported.js";
import { libraries } from "./support/packages.js";

/** The names that each declaration in a source speaks of, but for those in the body of a function. */
function spokenOf(path: string): readonly (readonly [name: string, names: readonly string[]])[] {
  const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
  return file.statements.flatMap((statement) => {
    const names: string[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isBlock(node) && ts.isFunctionLike(node.parent)) return;
      if (ts.isIdentifier(node)) names.push(node.text);
      ts.forEachChild(node, visit);
    };
    visit(statement);
    const declared = ts.isVariableStatement(statement) ? statement.declarationList.declarations : [statement];
    return declared.flatMap(({ name }: { name?: ts.Node }) =>
      name === undefined ? [] : [[name.getText(), names] as const],
    );
  });
}

/** The types that someone meets who calls what the packages export: what the calls take and give, and what that is made of. */
function typesMet(): ReadonlySet<string> {
  const spoken = new Map<string, string[]>();
  for (const { src } of libraries) {
    const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) =>
      file.endsWith(".ts"),
    );
    // What two files call the same for themselves counts for both.
    for (const [name, names] of files.flatMap((file) => spokenOf(join(src, file)))) {
      spoken.set(name, [...(spoken.get(name) ?? []), ...names]);
    }
  }
  const exported = libraries.flatMap(({ entries, src }) =>
    entries.flatMap((entry) => exportedNames(fileOf(src, entry))),
  );
  const met = new Set<string>();
  const ahead = exported.filter((name) => !name.startsWith("type "));
  for (let name = ahead.pop(); name !== undefined; name = ahead.pop()) {
    if (met.has(name)) continue;
    met.add(name);
    ahead.push(...(spoken.get(name) ?? []));
  }
  return met;
}

const met = typesMet();

describe.each(libraries)("$specifier", ({ entries, name, readme, src }) => {
  const names = entries.flatMap((entry) => exportedNames(fileOf(src, entry)));

  it("says in its README what everything is for that it exports", () => {
    const words = new Set(readFileSync(readme, "utf8").match(/\w+/g));
    expect(names.filter((word) => !word.startsWith("type ") && !words.has(word))).toEqual([]);
  });

  it("exports no type that nobody meets who calls what it exports", () => {
    const types = names.flatMap((word) => (word.startsWith("type ") ? [word.slice(5)] : []));
    expect(types.filter((type) => !met.has(type))).toEqual([]);
  });

  it.each(entries)("exports from %s what it did before, unless it is meant to change", async (entry) => {
    const file = fileOf(src, entry);
    const handed = exportedNames(file).sort();
    expect(handed.length).toBeGreaterThan(0);
    await expect(`${handed.join("\n")}\n`).toMatchFileSnapshot(
      `exports/${name}-${basename(file, ".ts")}.txt`,
    );
  });
});
